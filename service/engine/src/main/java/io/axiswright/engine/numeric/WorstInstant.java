package io.axiswright.engine.numeric;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The highest value of a function of the instant at which something begins, found with certainty by branch and bound: intervals
 * whose bound is above the best value found are halved until none is left that exceeds it by more than the tolerance.
 *
 * @param instant where, s
 * @param beside an instant beside it, which tells the two limits at a jump apart, s
 * @param value the value there
 * @param bound no instant's value is above this
 * @param evaluations how many instants were worked out
 */
public record WorstInstant(double instant, double beside, double value, double bound, int evaluations) {

    /** What is to be as high as possible. */
    public interface Objective {

        /** The value at an instant; of two limits there, that on the side of the second instant. */
        double value(double instant, double beside);

        /** Whether the limits on both sides of an instant may differ; else one stands for both. */
        default boolean jumps(double instant) {
            return true;
        }

        /**
         * What no value between two instants exceeds.
         *
         * @param atFrom the value at the first, on this side of it
         * @param atTo the value at the second
         * @param enough a bound up to here settles the interval: no closer one is needed
         */
        double bound(double from, double to, double atFrom, double atTo, double enough);
    }

    /**
     * The largest of many functions, each the energy of the bus, or of some part of a stop, as a linear functional of the power
     * over time, is convex in the power: between two instants it is nowhere higher than the higher of its values at both, plus
     * the most by which the power's own energies exceed what lies between those at both (the bend).
     */
    public interface Bending extends Objective {

        /** The most the value between two instants exceeds the higher of the values at both. */
        double bend(double from, double to);

        /** The same by a dearer look, taken only where the first does not settle it. */
        default double closerBend(double from, double to) {
            return bend(from, to);
        }

        @Override
        default double bound(double from, double to, double atFrom, double atTo, double enough) {
            double higher = Math.max(atFrom, atTo);
            double bound = higher + bend(from, to);
            return bound > enough ? Math.min(bound, higher + closerBend(from, to)) : bound;
        }
    }

    /**
     * How far the bound may lie above the value.
     *
     * @param share as a share of the value
     * @param plus and by this much more
     */
    public record Tolerance(double share, double plus) {

        private double over(double value) {
            return value + plus + (share == 0 ? 0 : share * Math.abs(value));
        }
    }

    private record Interval(double from, double to, double atFrom, double atTo, double bound) {}

    /**
     * Searches.
     *
     * @param cuts instants between which the bounds hold, ascending
     * @param tolerance how far the bound may lie above the value
     * @param most after how many instants to give up, with the bound reached by then
     */
    public static WorstInstant of(Objective objective, double[] cuts, Tolerance tolerance, int most) {
        return new Search(objective, tolerance, most).over(cuts);
    }

    /** Whether the function is proven to stay below a limit; cheaper than its highest value. False if it is not known. */
    public static boolean staysBelow(Objective objective, double[] cuts, double limit, int most) {
        var search = new Search(objective, new Tolerance(0, 0), most);
        search.best = Math.nextDown(limit);
        search.found = limit;
        return search.over(cuts).bound() < limit;
    }

    /** Sorted cuts without those nearer to each other than rounding. */
    public static double[] tidy(double[] cuts, double end) {
        double[] sorted = cuts.clone();
        Arrays.sort(sorted);
        double[] kept = new double[sorted.length + 2];
        int count = 1; // the first is 0
        for (double cut : sorted) {
            if (cut - kept[count - 1] > 1e-12 * end && cut < end * (1 - 1e-12)) {
                kept[count++] = cut;
            }
        }
        kept[count++] = end;
        return Arrays.copyOf(kept, count);
    }

    private static final class Search {

        /** Values nearer than this share of the fixed tolerance are one: of a plateau, the instant looked at first counts. */
        private static final double ALIKE = 1e-3;

        private final Objective objective;
        private final Tolerance tolerance;
        private final int most;
        private final PriorityQueue<Interval> open = new PriorityQueue<>(
                Comparator.comparingDouble(Interval::bound).reversed().thenComparingDouble(Interval::from));
        private double instant;
        private double beside;
        private double best = Double.NEGATIVE_INFINITY;
        private double noted = Double.NEGATIVE_INFINITY;
        private double closed = Double.NEGATIVE_INFINITY;
        /** A value from which on nothing more need be known. */
        private double found = Double.POSITIVE_INFINITY;

        private int evaluations;

        private Search(Objective objective, Tolerance tolerance, int most) {
            this.objective = objective;
            this.tolerance = tolerance;
            this.most = most;
        }

        private WorstInstant over(double[] cuts) {
            // all values first: the better the best, the fewer intervals stay open
            double[] values = new double[2 * cuts.length];
            for (int k = 0; k + 1 < cuts.length && best < found; k++) {
                double middle = (cuts[k] + cuts[k + 1]) / 2;
                values[2 * k] = k > 0 && !objective.jumps(cuts[k]) ? values[2 * k - 1] : value(cuts[k], middle);
                values[2 * k + 1] = value(cuts[k + 1], middle);
            }
            for (int k = 0; k + 1 < cuts.length && best < found; k++) {
                open(cuts[k], cuts[k + 1], values[2 * k], values[2 * k + 1]);
            }
            Interval highest = open.poll();
            while (highest != null && highest.bound() > tolerance.over(best) && evaluations < most && best < found) {
                double middle = (highest.from() + highest.to()) / 2;
                double value = value(middle, middle);
                open(highest.from(), middle, highest.atFrom(), value);
                open(middle, highest.to(), value, highest.atTo());
                highest = open.poll();
            }
            double left = highest == null ? best : highest.bound();
            return new WorstInstant(instant, beside, noted, Math.max(Math.max(best, closed), left), evaluations);
        }

        private double value(double at, double side) {
            double value = objective.value(at, side);
            evaluations++;
            best = Math.max(best, value);
            if (!(value <= noted + ALIKE * tolerance.plus())) {
                noted = value;
                instant = at;
                beside = side;
            }
            return value;
        }

        private void open(double from, double to, double atFrom, double atTo) {
            double middle = (from + to) / 2;
            double enough = tolerance.over(best);
            double bound = middle > from && middle < to
                    ? objective.bound(from, to, atFrom, atTo, enough)
                    : Math.max(atFrom, atTo);
            if (bound > enough) {
                open.add(new Interval(from, to, atFrom, atTo, bound));
            } else {
                closed = Math.max(closed, bound);
            }
        }
    }
}
