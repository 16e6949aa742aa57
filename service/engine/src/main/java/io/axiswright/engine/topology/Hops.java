package io.axiswright.engine.topology;

import java.util.ArrayDeque;
import java.util.Arrays;

/** How many gateways a trunk needs at least to lead from the host to each place. */
final class Hops {

    private Hops() {}

    /** By place; {@link Integer#MAX_VALUE} where no row of cables leads, however deep. */
    static int[] fewest(LayoutModel model) {
        var hops = new int[model.places()];
        Arrays.fill(hops, Integer.MAX_VALUE);
        var waiting = new ArrayDeque<Integer>();
        for (int place = 0; place < hops.length; place++) {
            if (model.host().reaches(0, place)) {
                hops[place] = 1;
                waiting.add(place);
            }
        }
        while (!waiting.isEmpty()) {
            int from = waiting.remove();
            for (int to = 0; to < hops.length; to++) {
                if (hops[to] == Integer.MAX_VALUE && model.trunk().reaches(from, to)) {
                    hops[to] = hops[from] + 1;
                    waiting.add(to);
                }
            }
        }
        return hops;
    }
}
