package io.axiswright.engine.stopping;

import io.axiswright.engine.numeric.WorstInstant;

/**
 * The longest way of a stop over all instants of the cycle, with certainty: what is run on in the reaction time before an
 * instant, and the stop from there. Between two instants the run-on cannot exceed its value at either end by more than the
 * greatest gain of the speed there over that a reaction time earlier allows, and the stop is no longer than its bound over
 * the speeds between. The way found is no more than a ten-thousandth short of the longest.
 *
 * @param instant when the stop begins to work, s
 * @param beside an instant beside it, which tells the two sides of a jump apart, s
 * @param angle way found, rad
 * @param bound no instant's way is longer, rad
 */
record FarthestStop(double instant, double beside, double angle, double bound) {

    private static final WorstInstant.Tolerance TOLERANCE = new WorstInstant.Tolerance(1e-4, 0);
    private static final int MOST_INSTANTS = 20_000;

    /**
     * Searches.
     *
     * @param course speed of the motor shaft over the cycle
     * @param reaction how long the axis runs on before the stop begins to work, s
     * @param stopping the stop
     */
    static FarthestStop of(SpeedCourse course, double reaction, Stopping stopping) {
        double[] cuts = course.cuts(reaction);
        WorstInstant worst = WorstInstant.of(new Way(course, reaction, stopping), cuts, TOLERANCE, MOST_INSTANTS);
        return new FarthestStop(
                worst.instant(), worst.beside(), Math.max(0, worst.value()), Math.max(0, worst.bound()));
    }

    /** The way of the stop begun at an instant, rad. */
    private record Way(SpeedCourse course, double reaction, Stopping stopping) implements WorstInstant.Objective {

        @Override
        public double value(double instant, double beside) {
            SpeedCourse.Stretch stretch = course.at(beside);
            return course.runOn(reaction, instant) + stopping.path(stretch.piece(), stretch.speed(instant));
        }

        @Override
        public double bound(double from, double to, double atFrom, double atTo, double enough) {
            SpeedCourse.Stretch stretch = course.at((from + to) / 2);
            double one = stretch.speed(from);
            double other = stretch.speed(to);
            return runOn(from, to, Math.abs(one), Math.abs(other))
                    + stopping.bound(stretch.piece(), Math.min(one, other), Math.max(one, other));
        }

        /** What is run on before any instant between two, by the speeds there, at the most. */
        private double runOn(double from, double to, double one, double other) {
            if (reaction == 0) {
                return 0;
            }
            double before = (from + to) / 2 - reaction;
            double earlierFrom = course.speed(from - reaction, before);
            double earlierTo = course.speed(to - reaction, before);
            double gain = Math.max(0, Math.max(one, other) - Math.min(earlierFrom, earlierTo));
            double loss = Math.max(0, Math.max(earlierFrom, earlierTo) - Math.min(one, other));
            return Math.min(
                    course.runOn(reaction, from) + gain * (to - from), course.runOn(reaction, to) + loss * (to - from));
        }
    }
}
