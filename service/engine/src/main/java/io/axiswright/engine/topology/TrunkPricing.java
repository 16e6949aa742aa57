package io.axiswright.engine.topology;

import io.axiswright.engine.topology.TrunkRoute.Stops;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The trunks that cost least beyond what the places they join are worth. Paths from the host grow place by place; one ends where even
 * the cheapest way on, which may call at a place too often, leads nowhere below the limit.
 */
final class TrunkPricing {

    /** Steps after which there are too many paths to go through. */
    private static final long MOST_STEPS = 20_000_000;

    private final LayoutModel model;
    private final int places;
    private final int deepest;
    /** By the place a link comes from (the last row: the host) and the place it goes to. */
    private final Score[][] link;

    TrunkPricing(LayoutModel model) {
        this.model = model;
        this.link = new Score[model.places() + 1][model.places()];
        for (int from = 0; from < link.length; from++) {
            for (int to = 0; to < model.places(); to++) {
                link[from][to] = model.link(from == model.places() ? LayoutModel.HOST : from, to);
            }
        }
        this.places = model.places();
        this.deepest = model.deepestChain();
    }

    /**
     * What trunks are measured against.
     *
     * @param trunk what a trunk is worth
     * @param place by depth of the trunk (from 1) and by place: what a gateway of it there is worth
     */
    record Worth(double trunk, double[][] place) {}

    /**
     * The cheapest routes.
     *
     * @param routes in order of what they cost beyond their worth
     * @param below every route that costs less than this beyond its worth is among them
     * @param least what the cheapest of them costs beyond its worth; positive infinity if there is none
     */
    record Cheapest(List<TrunkRoute> routes, double below, double least) {}

    /** A route and what it costs beyond its worth; ties by the places, so that the order does not depend on the search. */
    private record Dear(TrunkRoute route, double beyond) implements Comparable<Dear> {
        private static final Comparator<Dear> ORDER = Comparator.comparingDouble(Dear::beyond)
                .thenComparing(one -> one.route().places(), Arrays::compare);

        @Override
        public int compareTo(Dear other) {
            return ORDER.compare(this, other);
        }
    }

    /**
     * Looks for the cheapest routes.
     *
     * @param below only those that cost less than this beyond their worth
     * @param most how many at most
     * @return null if there are too many paths to tell
     */
    @Nullable
    Cheapest cheapest(Worth worth, double below, int most) {
        var search = new Search(worth, below, most);
        for (int depth = 1; depth <= deepest; depth++) {
            search.ofDepth(depth);
        }
        return search.steps > MOST_STEPS ? null : search.cheapest();
    }

    private final class Search {
        private final Worth worth;
        private final int most;
        private final TreeSet<Dear> kept = new TreeSet<>();
        private final Map<Stops, Dear> byStops = new HashMap<>();
        private final int[] path = new int[deepest];
        private final int[] there = new int[places];
        private double below;
        private long steps;

        private double[] gain = new double[0];
        private int depth;
        /** By gateways still to come and the place before them (the last row: the host): the ways on, cheapest first. */
        private int[][][] order = new int[0][][];

        private double[][][] cost = new double[0][][];

        Search(Worth worth, double below, int most) {
            this.worth = worth;
            this.below = below;
            this.most = most;
        }

        /** All paths with so many gateways. */
        void ofDepth(int gateways) {
            depth = gateways;
            gain = worth.place()[gateways];
            order = new int[gateways + 1][places + 1][];
            cost = new double[gateways + 1][places + 1][];
            var onward = new double[places];
            for (int left = 1; left < gateways; left++) {
                var best = new double[places];
                for (int from = 0; from < places; from++) {
                    best[from] = leave(from, left, onward);
                }
                onward = best;
            }
            leave(places, gateways, onward);
            follow(0, places, -worth.trunk(), Score.ZERO);
        }

        /** Notes the ways on from a place with so many gateways to come; what the cheapest costs beyond its worth. */
        private double leave(int from, int left, double[] onward) {
            double[] dear = ways(from, onward);
            cost[left][from] = dear;
            order[left][from] = IntStream.range(0, places)
                    .filter(to -> dear[to] < Double.POSITIVE_INFINITY)
                    .boxed()
                    .sorted(Comparator.comparingDouble(to -> dear[to]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            return order[left][from].length == 0 ? Double.POSITIVE_INFINITY : dear[order[left][from][0]];
        }

        /** By place: what going on there costs at least beyond its worth, with all that comes after it. */
        private double[] ways(int from, double[] onward) {
            var dear = new double[places];
            for (int to = 0; to < places; to++) {
                long cost = link[from][to].cost();
                dear[to] = model.room()[to] > 0 && cost < LinkTable.FAR
                        ? cost - gain[to] + onward[to]
                        : Double.POSITIVE_INFINITY;
            }
            return dear;
        }

        private void follow(int at, int from, double beyond, Score links) {
            if (at == depth) {
                keep(beyond, links);
                return;
            }
            int left = depth - at;
            double[] dear = cost[left][from];
            for (int to : order[left][from]) {
                if (beyond + dear[to] >= below || ++steps > MOST_STEPS) {
                    return;
                }
                if (there[to] < model.room()[to]) {
                    there[to]++;
                    path[at] = to;
                    Score step = link[from][to];
                    follow(at + 1, to, beyond + step.cost() - gain[to], links.plus(step));
                    there[to]--;
                }
            }
        }

        private void keep(double beyond, Score links) {
            Stops stops = TrunkRoute.stops(path, depth);
            Dear known = byStops.get(stops);
            if (known != null && !links.betterThan(known.route().links())) {
                return;
            }
            if (known != null) {
                kept.remove(known);
            }
            var found = new Dear(new TrunkRoute(Arrays.copyOf(path, depth), links), beyond);
            kept.add(found);
            byStops.put(stops, found);
            if (kept.size() > most) {
                Dear last = kept.removeLast();
                byStops.remove(last.route().stops());
                below = Math.min(below, last.beyond());
            }
        }

        Cheapest cheapest() {
            return new Cheapest(
                    kept.stream().map(Dear::route).toList(),
                    below,
                    kept.isEmpty() ? Double.POSITIVE_INFINITY : kept.first().beyond());
        }
    }
}
