package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.WorstPlace;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks for the hardest instant of all stops of a cycle at once: one variable is when in the cycle a stop begins, the other how
 * much of it is over. Whatever lies between is bounded by the mechanism's own formulas, so nothing can be missed.
 *
 * @param stretches the moving pieces of the cycle
 * @param stops the stops begun in them
 * @param measure what is looked for
 */
record StopSearch(List<StopStretch> stretches, ManyStops stops, StopMeasure measure) implements WorstPlace.Objective {

    /** How far the bound may lie above what is found. */
    static final double TOLERANCE = 1e-4;

    /** When to give up; random cycles of every mechanism need fewer than a fifth. */
    private static final int MOST_PLACES = 100_000;

    static StopSearch of(EvenStops stops, StopMeasure measure) {
        List<StopStretch> stretches = stops.load().pieces().stream()
                .map(StopStretch::of)
                .filter(stretch -> stretch.direction() != 0)
                .toList();
        return new StopSearch(stretches, stops.many(), measure);
    }

    /** When in the cycle the stop of a place begins, s. */
    double instant(WorstPlace place) {
        return stretches.get(place.part()).piece().start() + place.x();
    }

    /** An instant inside the piece of a place, s. */
    double beside(WorstPlace place) {
        LoadPiece piece = stretches.get(place.part()).piece();
        return piece.start() + piece.duration() / 2;
    }

    /** Whether the measure is greater than a value in some stop; null if that is not told before the search ends. */
    @Nullable
    Boolean exceeds(double value) {
        double[] from = new double[stretches.size()];
        double[] to =
                stretches.stream().mapToDouble(one -> one.piece().duration()).toArray();
        return WorstPlace.exceeds(this, from, to, value, TOLERANCE, MOST_PLACES);
    }

    /** The hardest place; its first variable is when the stop begins, since the start of the piece. */
    WorstPlace worst() {
        double[] from = new double[stretches.size()];
        double[] to =
                stretches.stream().mapToDouble(one -> one.piece().duration()).toArray();
        return WorstPlace.of(this, from, to, TOLERANCE, MOST_PLACES);
    }

    @Override
    public double value(int part, double x, double y) {
        return over(stretches.get(part), x, y, 0, 0).high();
    }

    @Override
    public double bound(int part, double x, double y, double halfX, double halfY, double value) {
        return over(stretches.get(part), x, y, halfX, halfY).bound(value, halfX, halfY);
    }

    private Enclosure over(StopStretch stretch, double time, double share, double halfTime, double halfShare) {
        MotorRange motor = stops.over(stretch, time, share, halfTime, halfShare);
        return measure.of(motor.torque(), motor.speed());
    }
}
