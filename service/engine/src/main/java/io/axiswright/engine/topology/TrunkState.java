package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;

/**
 * What a trunk still has to give.
 *
 * @param zone the one stop zone of its axes; −1 none yet, −2 several
 * @param scoped whether a stop input acts on all of it
 * @param depth gateways its types allow
 * @param rate command rate left on its port
 */
record TrunkState(int zone, boolean scoped, int depth, long rate) {

    static TrunkState of(LayoutModel model, Trunk trunk) {
        int zone = -1;
        boolean scoped = false;
        int depth = Integer.MAX_VALUE;
        long rate = model.portRate()[trunk.port];
        for (Node node : trunk.chain) {
            var type = model.types().get(node.type);
            scoped |= type.scope() == StopScope.TRUNK;
            depth = Math.min(depth, type.chainDepth());
            for (int index : node.axes) {
                var axis = model.axes().get(index);
                rate -= axis.rate();
                if (axis.zone() >= 0) {
                    zone = zone == -1 || zone == axis.zone() ? axis.zone() : -2;
                }
            }
        }
        return new TrunkState(zone, scoped, depth, rate);
    }

    /** Whether a gateway of that type with axes of that zone (−1: any mixture) may join. */
    boolean accepts(StopScope scope, int newZone) {
        if (!scoped && scope != StopScope.TRUNK) {
            return true;
        }
        return zone == -1 || (newZone >= 0 && zone == newZone);
    }
}
