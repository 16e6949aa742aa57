package io.axiswright.engine.braking;

import java.util.List;

/** Finds the shortest time that holds a whole number of every axis's cycle, if it is short enough to be followed. */
final class CommonPeriod {

    /** Most cycles of the slowest axis in the common period. */
    private static final int MOST_OF_SLOWEST = 24;

    /** Most cycles of all axes together in the common period. */
    private static final int MOST_TOGETHER = 400;

    /** Periods in a whole-number ratio to this relative accuracy count as such. */
    private static final double SAME = 1e-9;

    private CommonPeriod() {}

    /** The cycles as one load: together if they have a common period, else as a bound over all alignments. */
    static CycleLoad load(List<PowerCourse> courses) {
        double slowest =
                courses.stream().mapToDouble(PowerCourse::duration).max().orElse(0);
        for (int turns = 1; turns <= MOST_OF_SLOWEST; turns++) {
            double duration = turns * slowest;
            if (holdsWholeCycles(courses, duration)) {
                CycleBasis basis = sameForAll(courses, slowest) ? CycleBasis.PERIODIC : CycleBasis.COMMON_MULTIPLE;
                return new SteadyCycle(basis, BusPower.repeating(courses, duration));
            }
        }
        return new PhaseBound(courses);
    }

    private static boolean sameForAll(List<PowerCourse> courses, double slowest) {
        return courses.stream().allMatch(c -> Math.round(slowest / c.duration()) == 1);
    }

    private static boolean holdsWholeCycles(List<PowerCourse> courses, double duration) {
        double together = 0;
        for (PowerCourse course : courses) {
            double cycles = duration / course.duration();
            if (Math.abs(cycles - Math.rint(cycles)) > SAME * cycles) {
                return false;
            }
            together += cycles;
        }
        return together <= MOST_TOGETHER || courses.size() == 1;
    }
}
