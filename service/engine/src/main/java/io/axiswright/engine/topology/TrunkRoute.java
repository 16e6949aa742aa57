package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Trunk;
import java.util.Arrays;

/**
 * The places of the gateways on one trunk.
 *
 * @param places from the host on; a place comes as often as gateways of the trunk stand in it
 * @param links what joining them costs, and how long the cables are
 */
record TrunkRoute(int[] places, Score links) {

    /** What makes two routes the same but for their order. */
    record Stops(int[] sorted) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Stops(int[] those) && Arrays.equals(sorted, those);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(sorted);
        }
    }

    /** The route of a trunk, in its own order. */
    static TrunkRoute of(LayoutModel model, Trunk trunk) {
        int[] places = trunk.chain.stream().mapToInt(node -> node.place).toArray();
        Score links = Score.ZERO;
        for (int k = 0; k < places.length; k++) {
            links = links.plus(model.link(k == 0 ? LayoutModel.HOST : places[k - 1], places[k]));
        }
        return new TrunkRoute(places, links);
    }

    Stops stops() {
        return stops(places, places.length);
    }

    static Stops stops(int[] path, int length) {
        int[] sorted = Arrays.copyOf(path, length);
        Arrays.sort(sorted);
        return new Stops(sorted);
    }

    int depth() {
        return places.length;
    }

    /** How many gateways of the trunk stand in a place. */
    int gatewaysIn(int place) {
        return (int) Arrays.stream(places).filter(stop -> stop == place).count();
    }
}
