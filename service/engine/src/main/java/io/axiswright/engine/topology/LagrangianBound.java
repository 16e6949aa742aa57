package io.axiswright.engine.topology;

import io.axiswright.engine.topology.GatewayChoice.Choice;
import io.axiswright.engine.topology.GatewayChoice.Share;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A proven lower bound of the cost of every layout. "Every axis hangs on a gateway" is given up and priced instead; what
 * remains falls apart into one small choice for every place, solved exactly or from below. Prices are improved by
 * subgradient steps (M. L. Fisher, Management Science 27 (1981) 1-18, from memory). Values are whole numbers, so the
 * bound holds whatever the prices.
 */
final class LagrangianBound {

    private static final long SCALE = 1024;
    private static final int PATIENCE = 15;

    private final LayoutModel model;
    private final Surroundings surroundings;
    private final GatewayChoice choice;
    private final long[] reduced;
    private final long[] open;
    private final int fewest;
    private final int most;
    private final long trunkExtra;
    private final long together;
    private final long[] price;
    private long[] bestPrice;
    private long best = 0;

    LagrangianBound(LayoutModel model, Surroundings surroundings) {
        this.model = model;
        this.surroundings = surroundings;
        this.reduced = new long[model.axes().size()];
        this.choice = new GatewayChoice(model);
        this.open = GatewayChoice.cheapestLinks(model);
        this.fewest = GatewayCounts.fewestGateways(model);
        this.most = model.mostGateways();
        this.trunkExtra = trunkExtra();
        this.together = model.separations().leastCost(most);
        this.price = startPrices();
        this.bestPrice = price.clone();
    }

    /** The bound so far, in the model's money unit. */
    long value() {
        return Math.ceilDiv(best, SCALE);
    }

    /** The axes' prices that gave the best bound: what connecting each is worth, in the model's money unit. */
    long[] prices() {
        return Arrays.stream(bestPrice).map(value -> value / SCALE).toArray();
    }

    /**
     * Takes subgradient steps.
     *
     * @param target cost of the best layout known
     */
    void improve(long target, int rounds) {
        System.arraycopy(bestPrice, 0, price, 0, price.length);
        double step = 1;
        int stale = 0;
        for (int round = 0; round < rounds && value() < target; round++) {
            var missing = new double[price.length];
            Arrays.fill(missing, 1);
            long bound = evaluate(missing);
            if (bound > best) {
                best = bound;
                bestPrice = price.clone();
                stale = 0;
            } else if (++stale >= PATIENCE) {
                step /= 2;
                stale = 0;
            }
            double norm = Arrays.stream(missing).map(part -> part * part).sum();
            if (norm == 0) {
                return;
            }
            double stride = step * ((double) target * SCALE - bound) / norm;
            for (int axis = 0; axis < price.length; axis++) {
                price[axis] = Math.max(0, price[axis] + Math.round(stride * missing[axis]));
            }
        }
    }

    /** The bound for the present prices; takes off {@code missing} what of each axis is connected. */
    private long evaluate(double[] missing) {
        int places = model.places();
        var choices = new Choice[places];
        long highest = Arrays.stream(price).max().orElse(0);
        for (int place = 0; place < places; place++) {
            choices[place] = open[place] >= LinkTable.FAR
                    ? new Choice(Long.MAX_VALUE / 4, java.util.List.of())
                    : choice.best(open[place] * SCALE, SCALE, gainful(place, highest), reduced);
        }
        int[] order = IntStream.range(0, places)
                .boxed()
                .sorted(Comparator.comparingLong(place -> choices[place].value()))
                .mapToInt(Integer::intValue)
                .toArray();
        long bound = Arrays.stream(price).sum() + (trunkExtra + together) * SCALE;
        int count = 0;
        for (int place : order) {
            for (int copy = 0; copy < model.room()[place]; copy++) {
                Choice taken = choices[place];
                if (count >= most
                        || (count >= fewest && taken.value() >= 0)
                        || taken.value() >= LinkTable.FAR * SCALE) {
                    return bound;
                }
                bound += taken.value();
                count++;
                for (Share share : taken.share()) {
                    missing[share.axis()] -= share.part();
                }
            }
        }
        return bound;
    }

    /** The axes worth connecting to a place; beyond the highest price no spur pays, so the nearest are enough. */
    private List<Integer> gainful(int place, long highest) {
        var gainful = new ArrayList<Integer>();
        for (int axis : surroundings.axesOfPlace(place)) {
            long spur = model.spur().cost()[axis][place] * SCALE;
            if (spur >= highest) {
                break;
            }
            reduced[axis] = spur - price[axis];
            if (reduced[axis] < 0) {
                gainful.add(axis);
            }
        }
        return gainful;
    }

    /** What the first links of the fewest trunks cost at least beyond the cheapest link to their places. */
    private long trunkExtra() {
        long least = LinkTable.FAR;
        for (int place = 0; place < model.places(); place++) {
            if (model.host().reaches(0, place)) {
                least = Math.min(least, model.host().cost()[0][place] - open[place]);
            }
        }
        return least >= LinkTable.FAR ? 0 : least * GatewayCounts.fewestTrunks(model);
    }

    private long[] startPrices() {
        long gateway =
                model.types().stream().mapToLong(LayoutModel.Type::price).min().orElse(0);
        var start = new long[model.axes().size()];
        for (int axis = 0; axis < start.length; axis++) {
            long least = LinkTable.FAR;
            for (int place = 0; place < model.places(); place++) {
                if (model.spur().reaches(axis, place) && open[place] < LinkTable.FAR) {
                    long share = (open[place] + gateway) / Math.max(1, model.mostDrivePorts());
                    least = Math.min(least, model.spur().cost()[axis][place] + share);
                }
            }
            start[axis] = least >= LinkTable.FAR ? 0 : least * SCALE;
        }
        return start;
    }
}
