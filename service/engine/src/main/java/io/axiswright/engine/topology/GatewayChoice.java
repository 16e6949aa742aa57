package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The best gateway to open at one place for given axis prices: which type, which stop zone and which axes make price plus
 * reduced spur costs least. Relaxed where needed to stay simple, so its value is never above the true one.
 */
final class GatewayChoice {

    /**
     * A gateway with the axes it takes.
     *
     * @param value price, link and reduced spur costs
     * @param share how much of each axis it takes: whole axes but for the last where only the command rate limits
     */
    record Choice(long value, List<Share> share) {}

    /** An axis and how much of it is taken, 0 to 1. */
    record Share(int axis, double part) {}

    private final LayoutModel model;
    private final StopZones zones;
    private final CountChoice counts;
    private final long fastestPort;
    private final boolean rateMatters;

    GatewayChoice(LayoutModel model) {
        this.model = model;
        this.zones = new StopZones(model);
        this.counts = new CountChoice(model);
        long most = model.axes().stream()
                .map(LayoutModel.Axis::rate)
                .sorted((a, b) -> Long.compare(b, a))
                .limit(model.mostDrivePorts())
                .mapToLong(Long::longValue)
                .sum();
        this.fastestPort = model.fastestPort();
        this.rateMatters = most > fastestPort;
    }

    /**
     * The best choice at a place.
     *
     * @param open cost of any gateway there but for its price
     * @param scale factor on the model's money
     * @param gainful the axes worth connecting there: those whose reduced cost is below 0
     * @param reduced scaled spur cost less the axis's price, by axis; read for those axes only
     */
    Choice best(long open, long scale, List<Integer> gainful, long[] reduced) {
        Choice byCount = counts.best(open, scale, gainful, reduced);
        // what one port carries is the best whether or not rates are looked at
        return !rateMatters || rate(byCount) <= fastestPort ? byCount : ratedBest(open, scale, gainful, reduced);
    }

    private long rate(Choice choice) {
        long rate = 0;
        for (Share share : choice.share()) {
            rate += model.axes().get(share.axis()).rate();
        }
        return rate;
    }

    private Choice ratedBest(long open, long scale, List<Integer> gainful, long[] reduced) {
        gainful.sort(Comparator.comparingLong(axis -> reduced[axis]));
        var byZone = zones.split(gainful);
        Choice best = null;
        for (LayoutModel.Type type : model.types()) {
            long fixed = open + type.price() * scale;
            best = lower(best, new Choice(fixed, List.of()));
            boolean mixes = type.scope() == StopScope.NONE || zones.count() < 2;
            for (var inZone : byZone.entrySet()) {
                if (mixes == (inZone.getKey() == StopZones.ANY)) {
                    best = lower(best, choice(fixed, type, inZone.getValue(), reduced));
                }
            }
        }
        return best == null ? new Choice(Long.MAX_VALUE / 4, List.of()) : best;
    }

    private Choice choice(long fixed, LayoutModel.Type type, List<Integer> gainful, long[] reduced) {
        Choice byCount = byCount(fixed, type, gainful, reduced);
        // where one port carries all of them, taking all of them is what the rate allows: never the dearer choice
        if (rate(gainful) <= fastestPort) {
            return byCount;
        }
        Choice byRate = byRate(fixed, gainful, reduced);
        return byRate.value() > byCount.value() ? byRate : byCount;
    }

    /** Greedy is exact here: so many axes in all, so many of them with brakes, is a laminar matroid. */
    private Choice byCount(long fixed, LayoutModel.Type type, List<Integer> gainful, long[] reduced) {
        var taken = new java.util.ArrayList<Share>();
        long value = fixed;
        int brakes = 0;
        for (int index : gainful) {
            var axis = model.axes().get(index);
            if (taken.size() == type.drivePorts()) {
                break;
            }
            if (axis.brake() && brakes == type.brakeOutputs()) {
                continue;
            }
            brakes += axis.brake() ? 1 : 0;
            value += reduced[index];
            taken.add(new Share(index, 1));
        }
        return new Choice(value, taken);
    }

    /** The linear relaxation of the knapsack: best gain per command first, the last axis in part. */
    private Choice byRate(long fixed, List<Integer> gainful, long[] reduced) {
        var byGain = gainful.stream()
                .sorted((a, b) -> Double.compare(
                        (double) reduced[a] / model.axes().get(a).rate(),
                        (double) reduced[b] / model.axes().get(b).rate()))
                .toList();
        var taken = new java.util.ArrayList<Share>();
        long value = fixed;
        long left = fastestPort;
        for (int index : byGain) {
            long rate = model.axes().get(index).rate();
            double part = Math.min(1, (double) left / rate);
            if (part <= 0) {
                break;
            }
            value += part == 1 ? reduced[index] : (long) Math.floor(reduced[index] * part) - 1;
            taken.add(new Share(index, part));
            left -= Math.min(left, rate);
        }
        return new Choice(value, taken);
    }

    private long rate(List<Integer> axes) {
        long rate = 0;
        for (int axis : axes) {
            rate += model.axes().get(axis).rate();
        }
        return rate;
    }

    private static Choice lower(@Nullable Choice best, Choice other) {
        return best == null || other.value() < best.value() ? other : best;
    }

    /** Cheapest link that can lead to each place: from the host, from another gateway, or none beside one coupled directly. */
    static long[] cheapestLinks(LayoutModel model) {
        var cheapest = new long[model.places()];
        Arrays.setAll(cheapest, place -> {
            if (model.couples() && model.deepestChain() > 1 && model.room()[place] > 1) {
                return 0;
            }
            long least = model.host().cost()[0][place];
            for (int from = 0; from < cheapest.length && model.deepestChain() > 1; from++) {
                if (from != place || model.room()[place] > 1) {
                    least = Math.min(least, model.trunk().cost()[from][place]);
                }
            }
            return least;
        });
        return cheapest;
    }
}
