package io.axiswright.engine.topology;

import java.util.Arrays;
import java.util.stream.IntStream;

/** Least numbers of gateways and trunks that any layout needs, by counting alone. */
final class GatewayCounts {

    private GatewayCounts() {}

    /** Gateways that drive ports, brake outputs, stop zones and separations ask for at least. */
    static int fewestGateways(LayoutModel model) {
        int ports = model.mostDrivePorts();
        int byPorts = shared(model.axes().size(), ports);
        int byBrakes = shared(model.brakes(), model.mostBrakeOutputs());
        int bySeparation = model.separations().fewestGateways();
        return Math.max(Math.max(byPorts, byBrakes), Math.max(bySeparation, fewestGatewaysByZone(model)));
    }

    /** Gateways the stop zones ask for at least; 0 where zones may be mixed. */
    static int fewestGatewaysByZone(LayoutModel model) {
        if (!model.everyGatewayInOneZone()) {
            return 0;
        }
        return IntStream.range(0, model.zones())
                .map(zone -> shared(model.zoneSize(zone), model.mostDrivePorts()))
                .sum();
    }

    /** Trunks that gateways, stop zones and command rates ask for at least. */
    static int fewestTrunks(LayoutModel model) {
        int byDepth = shared(fewestGateways(model), model.deepestChain());
        int byZone = model.everyTrunkInOneZone() ? fewestTrunksByZone(model) : 0;
        return Math.max(Math.max(byDepth, byZone), fewestTrunksByRate(model));
    }

    /** Trunks the stop zones ask for at least where no trunk may mix them. */
    static int fewestTrunksByZone(LayoutModel model) {
        return IntStream.range(0, model.zones())
                .map(zone -> shared(shared(model.zoneSize(zone), model.mostDrivePorts()), model.deepestChain()))
                .sum();
    }

    /** Host ports the sum of the command rates asks for at least; one more than there are if all together fall short. */
    static int fewestTrunksByRate(LayoutModel model) {
        long[] rates = model.portRate().clone();
        Arrays.sort(rates);
        long left = model.totalRate();
        int count = 0;
        for (int port = rates.length - 1; port >= 0 && left > 0; port--) {
            left -= rates[port];
            count++;
        }
        return left > 0 ? count + 1 : count;
    }

    /** Boxes of the given size for so many things; without size, one more than there can be. */
    private static int shared(int things, int size) {
        if (things == 0) {
            return 0;
        }
        return size == 0 ? Integer.MAX_VALUE / 1024 : (things + size - 1) / size;
    }
}
