package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Enclosure.Range;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.numeric.WorstPlace;
import java.util.List;

/**
 * Looks for the hardest instant of all stops of a cycle at once: one variable is when in the cycle a stop begins, the other how
 * much of it is over. Whatever lies between is bounded by the mechanism's own formulas, so nothing can be missed.
 *
 * @param stretches the moving pieces of the cycle
 * @param drivetrain the way from the load to the motor
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 * @param measure what is looked for
 */
record StopSearch(List<Stretch> stretches, Drivetrain drivetrain, double inertia, double duration, StopMeasure measure)
        implements WorstPlace.Objective {

    /** How far the bound may lie above what is found. */
    static final double TOLERANCE = 1e-4;

    /** When to give up; random cycles of every mechanism need fewer than a fifth. */
    private static final int MOST_PLACES = 100_000;

    /**
     * A piece of the cycle.
     *
     * @param piece the piece
     * @param speed speed of the load over the time since it began, m/s or rad/s
     * @param acceleration its derivative
     * @param jerk its second derivative
     * @param hardestJerk the greatest magnitude of that
     * @param direction sign of the speed
     */
    record Stretch(
            LoadPiece piece,
            Polynomial speed,
            Polynomial acceleration,
            Polynomial jerk,
            double hardestJerk,
            double direction) {

        static Stretch of(LoadPiece piece) {
            Polynomial speed = piece.position().derivative();
            Polynomial acceleration = speed.derivative();
            Polynomial jerk = acceleration.derivative();
            return new Stretch(
                    piece,
                    speed,
                    acceleration,
                    jerk,
                    jerk.largestMagnitude(0, piece.duration()),
                    Math.signum(speed.at(piece.duration() / 2)));
        }

        /** The speed over a time and what lies within a half width of it; its slope is the acceleration. */
        private Enclosure speed(double time, double half) {
            double middle = acceleration.at(time);
            double gain = hardestJerk * half;
            double most = (Math.abs(middle) + gain / 2) * half;
            double here = speed.at(time);
            return new Enclosure(here - most, here + most, new Range(middle - gain, middle + gain), Range.NONE);
        }

        private Enclosure position(double time, double half, Enclosure speed) {
            double here = piece.position().at(time);
            double most = Math.max(Math.abs(speed.low()), Math.abs(speed.high())) * half;
            return new Enclosure(here - most, here + most, new Range(speed.low(), speed.high()), Range.NONE);
        }
    }

    static StopSearch of(EvenStops stops, StopMeasure measure) {
        List<Stretch> stretches = stops.load().pieces().stream()
                .map(Stretch::of)
                .filter(stretch -> stretch.direction() != 0)
                .toList();
        return new StopSearch(stretches, stops.load().drivetrain(), stops.inertia(), stops.duration(), measure);
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

    /** The measure over the stops begun within a half width of a time, while such a share of them is over. */
    private Enclosure over(Stretch stretch, double time, double share, double halfTime, double halfShare) {
        Enclosure start = stretch.speed(time, halfTime);
        double first = share - halfShare;
        double last = share + halfShare;
        var left = new Enclosure(1 - last, 1 - first, Range.NONE, new Range(-1, -1));
        var way = new Enclosure(
                first - first * first / 2, last - last * last / 2, Range.NONE, new Range(1 - last, 1 - first));
        Enclosure position =
                stretch.position(time, halfTime, start).plus(start.times(way).times(duration));
        return atMotor(
                stretch.piece()
                        .effort()
                        .range(position, start.times(left), start.times(-1 / duration), stretch.direction()),
                stretch.direction());
    }

    private Enclosure atMotor(ShaftRange shaft, double direction) {
        Enclosure torque = shaft.torque();
        double turns = 1;
        for (Stage stage : drivetrain.stages()) {
            turns *= stage.ratio();
            torque = stage.passed(torque, shaft.acceleration().times(turns), direction);
        }
        Enclosure acceleration = shaft.acceleration().times(turns);
        return measure.of(
                torque.plus(acceleration.times(inertia)), shaft.speed().times(turns));
    }
}
