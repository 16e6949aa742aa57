package io.axiswright.engine.supply;

import java.util.ArrayList;
import java.util.List;

/** What heats the conductors that several loads share, where cycles that last equally long are known to start together. */
final class SharedTimeline {

    /** Cycles that differ by no more than this share last equally long. */
    private static final double SAME = 1e-9;

    private SharedTimeline() {}

    /**
     * The effective current of the loads together, A: of those in step that of their sum at each moment. Between loads whose
     * cycles do not last equally long, and for what a load draws beyond its course, the effective values are added up, which is
     * never too little.
     */
    static double thermal(List<SupplyLoad> loads) {
        double sum = loads.stream().mapToDouble(l -> l.thermalCurrent().si()).sum();
        var courses = new ArrayList<CurrentCourse>();
        for (SupplyLoad load : loads) {
            CurrentCourse course = load.course();
            if (course != null) {
                sum -= course.rms();
                courses.add(course);
            }
        }
        while (!courses.isEmpty()) {
            double period = courses.getLast().period();
            var inStep = courses.stream()
                    .filter(course -> Math.abs(course.period() - period) <= SAME * period)
                    .toList();
            courses.removeAll(inStep);
            sum += together(inStep).rms();
        }
        return sum;
    }

    /** In halves, so that no piece is added up more often than the number of loads can be halved. */
    private static CurrentCourse together(List<CurrentCourse> courses) {
        int half = courses.size() / 2;
        return half == 0
                ? courses.getFirst()
                : together(courses.subList(0, half)).plus(together(courses.subList(half, courses.size())));
    }
}
