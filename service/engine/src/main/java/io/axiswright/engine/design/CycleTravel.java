package io.axiswright.engine.design;

/** How far the segments of a cycle go, without regard to how. */
final class CycleTravel {

    private CycleTravel() {}

    /** How far one segment goes, signed, m or rad. */
    static double of(Segment segment) {
        return switch (segment) {
            case Move move -> move.distance().si();
            case Dwell _ -> 0;
        };
    }
}
