package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;

/** The hard limits, checked on a layout under construction. */
final class LayoutRules {

    private static final int NO_ZONE = -1;
    private static final int MIXED = -2;

    private LayoutRules() {}

    /** Whether every limit of a trunk and of its gateways holds: ports, brakes, zones, separations, depth, rate, reach. */
    static boolean hold(LayoutModel model, Trunk trunk) {
        int depth = trunk.chain.size();
        int trunkZone = NO_ZONE;
        boolean trunkScope = false;
        long rate = 0;
        Node before = null;
        int row = 1;
        for (Node node : trunk.chain) {
            var type = model.types().get(node.type);
            if (depth > type.chainDepth() || node.axes.size() > type.drivePorts()) {
                return false;
            }
            row = model.row(before, node, row);
            LinkTable link = before == null ? model.host() : model.trunk();
            if (row == 1 && !link.reaches(before == null ? 0 : before.place, node.place)) {
                return false;
            }
            before = node;
            int zone = NO_ZONE;
            int brakes = 0;
            for (int index : node.axes) {
                if (!model.spur().reaches(index, node.place)) {
                    return false;
                }
                var axis = model.axes().get(index);
                zone = joined(zone, axis.zone());
                brakes += axis.brake() ? 1 : 0;
                rate += axis.rate();
            }
            if (!model.separations().hold(node.axes)) {
                return false;
            }
            if (brakes > type.brakeOutputs() || (zone == MIXED && type.scope() != StopScope.NONE)) {
                return false;
            }
            trunkZone = joined(trunkZone, zone);
            trunkScope |= type.scope() == StopScope.TRUNK;
        }
        return rate <= model.portRate()[trunk.port] && !(trunkScope && trunkZone == MIXED);
    }

    private static int joined(int zone, int other) {
        if (zone == NO_ZONE || zone == other) {
            return other;
        }
        return other == NO_ZONE ? zone : MIXED;
    }
}
