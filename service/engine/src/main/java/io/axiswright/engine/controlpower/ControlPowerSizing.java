package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Works out the 24 V DC control supply: picks supplies and feed cables at least cost so that every gateway, drive and brake
 * gets enough voltage, and says by how much.
 *
 * <p>Gateways and drive logic take constant power, brakes are constant resistances; the network of loop resistances is
 * solved for released brakes held and for brakes pulling in. Voltages are judged at the lowest output of the supply,
 * currents at its lowest and its highest, conductors hot.
 */
public final class ControlPowerSizing {

    /**
     * Works out the control supply.
     *
     * @throws InvalidDesign if ids are used twice, or feeds come from nowhere, in circles or from another chain
     */
    public ControlPowerResult size(ControlPowerRequest request) {
        RequestFaults.refuse(request);
        Temperature conductor = Conductors.temperature(request.site());
        List<ChainNetwork> networks = networks(request, conductor);
        var cables =
                new CablePicker(request.cables(), request.site(), request.spec().brakesReleaseTogether());
        List<ControlSupply> supplies = request.supplies().stream()
                .filter(supply -> MainsMatch.hasPhases(request.mains(), supply))
                .toList();
        ResultWriter writer = new ResultWriter(request, conductor, cables.longest());
        writer.loads();
        if (supplies.isEmpty()) {
            networks.forEach(writer::unfed);
        } else {
            var feeds = new FeedPoints(cables, conductor);
            new SupplyPicker(request, networks, supplies, feeds).pick().forEach(writer::supply);
        }
        return writer.result();
    }

    /** One network a chain, in the order in which chains first appear. */
    private static List<ChainNetwork> networks(ControlPowerRequest request, Temperature conductor) {
        Map<String, List<ControlNode>> chains = new LinkedHashMap<>();
        for (ControlNode node : request.nodes()) {
            chains.computeIfAbsent(node.chain(), name -> new ArrayList<>()).add(node);
        }
        return chains.entrySet().stream()
                .map(chain -> new ChainNetwork(chain.getKey(), chain.getValue(), conductor))
                .toList();
    }
}
