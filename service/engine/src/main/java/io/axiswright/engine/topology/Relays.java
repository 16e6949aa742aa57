package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The cheapest way from the host to each place, through relay gateways at other places if no cable reaches directly. */
final class Relays {

    private final long[] cost;
    private final int[] before;

    /** Bellman's recursion over the number of hops; each hop beyond the first costs a relay gateway more. */
    Relays(LayoutModel model) {
        int places = model.places();
        long relay =
                model.types().stream().mapToLong(LayoutModel.Type::price).min().orElse(0);
        cost = model.host().cost()[0].clone();
        before = new int[places];
        Arrays.fill(before, -1);
        for (int hop = 2; hop <= Math.min(places, model.deepestChain()); hop++) {
            long[] known = cost.clone();
            for (int to = 0; to < places; to++) {
                // A direct cable is always kept: no relay then, and the ways stay free of circles.
                if (model.host().reaches(0, to)) {
                    continue;
                }
                for (int from = 0; from < places; from++) {
                    if (known[from] < LinkTable.FAR && model.trunk().reaches(from, to)) {
                        long way = known[from] + relay + model.trunk().cost()[from][to];
                        if (way < cost[to]) {
                            cost[to] = way;
                            before[to] = from;
                        }
                    }
                }
            }
        }
    }

    boolean exists(int place) {
        return cost[place] < LinkTable.FAR;
    }

    /** Links and relays on the way; the gateway at the place itself is not counted. */
    long cost(int place) {
        return cost[place];
    }

    /** The places on the way, the last being the place itself. */
    List<Integer> to(int place) {
        var way = new ArrayList<Integer>();
        for (int at = place; at >= 0 && way.size() <= cost.length; at = before[at]) {
            way.addFirst(at);
        }
        return way;
    }
}
