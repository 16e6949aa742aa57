package io.axiswright.engine.duty;

/**
 * How much stops differ whose torque depends on where they begin, judged by those begun at both ends and in the middle. As the
 * interval narrows the judgement becomes right, but it proves nothing; twice what is seen is taken.
 */
final class SampledStopRange {

    /** Times since the start of a stop that are looked at. */
    private static final int TIMES = 16;

    private static final double MARGIN = 2;

    private SampledStopRange() {}

    static StopRange of(EvenStops stops, LoadPiece piece, double from, double to) {
        double a = from - piece.start();
        double b = to - piece.start();
        double middle = (from + to) / 2;
        Course[] courses = {stops.from(from, middle), stops.from(middle, middle), stops.from(to, middle)};
        double half = (to - from) / 2;
        double most = 0;
        double rate = 0;
        double bend = 0;
        for (int k = 0; k <= TIMES; k++) {
            double at = stops.duration() * k / TIMES;
            double first = torque(courses[0], at);
            double second = torque(courses[1], at);
            double third = torque(courses[2], at);
            most = Math.max(most, Math.max(Math.abs(first), Math.max(Math.abs(second), Math.abs(third))));
            rate = Math.max(rate, Math.max(Math.abs(second - first), Math.abs(third - second)) / half);
            bend = Math.max(bend, Math.abs(first - 2 * second + third) / (half * half));
        }
        return new StopRange(
                piece.speed().largestMagnitude(a, b),
                piece.acceleration().largestMagnitude(a, b),
                piece.acceleration().derivative().largestMagnitude(a, b),
                MARGIN * most,
                MARGIN * rate,
                MARGIN * bend,
                0);
    }

    private static double torque(Course course, double at) {
        for (Course.Piece piece : course.pieces()) {
            if (at <= piece.end()) {
                return piece.torque().at(at - piece.start());
            }
        }
        return 0;
    }
}
