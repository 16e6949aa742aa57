package io.axiswright.engine.stopping;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The longest way of a stop over all instants of the cycle, with certainty: what is run on in the reaction time before an
 * instant, and the stop from there. Between two instants the run-on cannot exceed its value at either end by more than the
 * greatest gain of the speed there over that a reaction time earlier allows, and the stop is no longer than its bound over
 * the speeds between. Intervals are halved until none can hold a way longer than the one found by more than a ten-thousandth.
 *
 * @param instant when the stop begins to work, s
 * @param angle way found, rad
 * @param bound no instant's way is longer, rad
 */
record FarthestStop(double instant, double angle, double bound) {

    private static final double TOLERANCE = 1e-4;
    private static final int MOST_INSTANTS = 20_000;

    private record Interval(double from, double to, double bound) {}

    /**
     * Searches.
     *
     * @param course speed of the motor shaft over the cycle
     * @param reaction how long the axis runs on before the stop begins to work, s
     * @param stopping the stop
     */
    static FarthestStop of(SpeedCourse course, double reaction, Stopping stopping) {
        return new Search(course, reaction, stopping).run();
    }

    private static final class Search {

        private final SpeedCourse course;
        private final double reaction;
        private final Stopping stopping;
        private final PriorityQueue<Interval> open = new PriorityQueue<>(
                Comparator.comparingDouble(Interval::bound).reversed().thenComparingDouble(Interval::from));
        private double instant;
        private double best;
        private double closed;
        private int instants;

        Search(SpeedCourse course, double reaction, Stopping stopping) {
            this.course = course;
            this.reaction = reaction;
            this.stopping = stopping;
        }

        FarthestStop run() {
            double[] cuts = course.cuts(reaction);
            for (int k = 1; k < cuts.length; k++) {
                double middle = (cuts[k - 1] + cuts[k]) / 2;
                if (middle > cuts[k - 1] && middle < cuts[k]) {
                    note(cuts[k - 1], middle);
                    note(cuts[k], middle);
                    open(cuts[k - 1], cuts[k]);
                }
            }
            Interval highest = open.poll();
            while (highest != null && highest.bound() > limit() && instants < MOST_INSTANTS) {
                double middle = (highest.from() + highest.to()) / 2;
                note(middle, middle);
                open(highest.from(), middle);
                open(middle, highest.to());
                highest = open.poll();
            }
            double left = highest == null ? best : highest.bound();
            return new FarthestStop(instant, best, Math.max(Math.max(best, closed), left));
        }

        private double limit() {
            return best * (1 + TOLERANCE);
        }

        /** The way of the stop at an instant, by the stretch of one beside it. */
        private void note(double at, double beside) {
            SpeedCourse.Stretch stretch = course.at(beside);
            double way = course.runOn(reaction, at) + stopping.path(stretch.piece(), stretch.speed(at));
            instants++;
            if (way > best) {
                best = way;
                instant = at;
            }
        }

        private void open(double from, double to) {
            double middle = (from + to) / 2;
            SpeedCourse.Stretch stretch = course.at(middle);
            double one = stretch.speed(from);
            double other = stretch.speed(to);
            double now = Math.max(Math.abs(one), Math.abs(other));
            double leastNow = Math.min(Math.abs(one), Math.abs(other));
            double earlierFrom = course.speed(from - reaction, middle - reaction);
            double earlierTo = course.speed(to - reaction, middle - reaction);
            double gain = Math.max(0, now - Math.min(earlierFrom, earlierTo));
            double loss = Math.max(0, Math.max(earlierFrom, earlierTo) - leastNow);
            double runOn = Math.min(
                    course.runOn(reaction, from) + gain * (to - from), course.runOn(reaction, to) + loss * (to - from));
            double bound = runOn + stopping.bound(stretch.piece(), Math.min(one, other), Math.max(one, other));
            if (bound > limit()) {
                open.add(new Interval(from, to, bound));
            } else {
                closed = Math.max(closed, bound);
            }
        }
    }
}
