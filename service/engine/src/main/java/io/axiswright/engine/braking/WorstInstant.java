package io.axiswright.engine.braking;

import java.util.Arrays;
import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The highest value of a function of the instant at which a stop begins, found with certainty by branch and bound.
 *
 * <p>The function is the largest of many, each the energy of the bus, or of some part of a stop, as a linear functional of the
 * power over time. Such a function of functions is convex in the power: between two instants it is nowhere higher than the
 * higher of its values at both, plus the most by which the power's own energies exceed what lies between those at both (the
 * bend). Intervals whose bound is above the best value found are halved until none is left that exceeds it by more than the
 * tolerance.
 *
 * @param instant where, s
 * @param beside an instant beside it, which tells the two limits at a jump apart, s
 * @param value the value there, J
 * @param bound no instant's value is above this, J
 * @param evaluations how many instants were worked out
 */
record WorstInstant(double instant, double beside, double value, double bound, int evaluations) {

    /** What is to be as high as possible. */
    interface Objective {

        /** The value at an instant; of two limits there, that on the side of the second instant. */
        double value(double instant, double beside);

        /** Whether the limits on both sides of an instant may differ; else one stands for both. */
        default boolean jumps(double instant) {
            return true;
        }

        /** The most the value between two instants exceeds the higher of the values at both. */
        double bend(double from, double to);

        /** The same by a dearer look, taken only where the first does not settle it. */
        default double closerBend(double from, double to) {
            return bend(from, to);
        }
    }

    private record Interval(double from, double to, double atFrom, double atTo, double bound) {}

    /**
     * Searches.
     *
     * @param cuts instants between which the bend holds, ascending
     * @param tolerance how far the bound may lie above the value, J
     * @param most after how many instants to give up, with the bound reached by then
     */
    static WorstInstant of(Objective objective, double[] cuts, double tolerance, int most) {
        return new Search(objective, tolerance, most).over(cuts);
    }

    /** Whether the function is proven to stay below a limit; cheaper than its highest value. False if it is not known. */
    static boolean staysBelow(Objective objective, double[] cuts, double limit, int most) {
        var search = new Search(objective, 0, most);
        search.best = Math.nextDown(limit);
        search.enough = limit;
        return search.over(cuts).bound() < limit;
    }

    /** Sorted cuts without those nearer to each other than rounding. */
    static double[] tidy(double[] cuts, double end) {
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

        /** Values as near to each other as this share of the tolerance are one: of a plateau, the instant looked at first counts. */
        private static final double ALIKE = 1e-3;

        private final Objective objective;
        private final double tolerance;
        private final int most;
        private final PriorityQueue<Interval> open = new PriorityQueue<>(
                Comparator.comparingDouble(Interval::bound).reversed().thenComparingDouble(Interval::from));
        private double instant;
        private double beside;
        private double best = Double.NEGATIVE_INFINITY;
        private double noted = Double.NEGATIVE_INFINITY;
        private double closed = Double.NEGATIVE_INFINITY;
        private double enough = Double.POSITIVE_INFINITY;
        private int evaluations;

        private Search(Objective objective, double tolerance, int most) {
            this.objective = objective;
            this.tolerance = tolerance;
            this.most = most;
        }

        private WorstInstant over(double[] cuts) {
            // all values first: the better the best, the fewer intervals stay open
            double[] values = new double[2 * cuts.length];
            for (int k = 0; k + 1 < cuts.length && best < enough; k++) {
                double middle = (cuts[k] + cuts[k + 1]) / 2;
                values[2 * k] = k > 0 && !objective.jumps(cuts[k]) ? values[2 * k - 1] : value(cuts[k], middle);
                values[2 * k + 1] = value(cuts[k + 1], middle);
            }
            for (int k = 0; k + 1 < cuts.length && best < enough; k++) {
                open(cuts[k], cuts[k + 1], values[2 * k], values[2 * k + 1]);
            }
            Interval highest = open.poll();
            while (highest != null && highest.bound() > best + tolerance && evaluations < most && best < enough) {
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
            if (!(value <= noted + ALIKE * tolerance)) {
                noted = value;
                instant = at;
                beside = side;
            }
            return value;
        }

        private void open(double from, double to, double atFrom, double atTo) {
            double higher = Math.max(atFrom, atTo);
            double bound = higher + objective.bend(from, to);
            if (bound > best + tolerance) {
                bound = Math.min(bound, higher + objective.closerBend(from, to));
            }
            if (bound > best + tolerance) {
                open.add(new Interval(from, to, atFrom, atTo, bound));
            } else {
                closed = Math.max(closed, bound);
            }
        }
    }
}
