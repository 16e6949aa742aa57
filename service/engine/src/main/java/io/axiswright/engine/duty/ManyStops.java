package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Enclosure.Range;

/**
 * Even decelerations to rest by the mechanism's own formulas, many at once: one variable is when in the cycle the stop begins,
 * the other how much of it is over.
 *
 * @param drivetrain the way from the load to the motor
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 */
record ManyStops(Drivetrain drivetrain, double inertia, double duration) {

    /** The most parts a stop is cut into to see how much those begun in an interval differ. */
    private static final int MOST_PARTS = 64;

    private static final int LEAST_PARTS = 16;

    /** The motor in the stops begun within a half width of a time since the start of a piece, while such a share of them is over. */
    MotorRange over(StopStretch stretch, double time, double share, double halfTime, double halfShare) {
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

    private MotorRange atMotor(ShaftRange shaft, double direction) {
        Enclosure torque = shaft.torque();
        double turns = 1;
        for (Stage stage : drivetrain.stages()) {
            turns *= stage.ratio();
            torque = stage.passed(torque, shaft.acceleration().times(turns), direction);
        }
        Enclosure acceleration = shaft.acceleration().times(turns);
        return new MotorRange(shaft.speed().times(turns), torque.plus(acceleration.times(inertia)));
    }

    /**
     * The bend of the power over the stops begun between two times since the start of a piece. A stop is cut into parts so that
     * what changes abruptly, where a flow of power or a slider turns, counts only where in the stop that happens.
     */
    PowerBend bend(LoadPiece piece, double from, double to, double lossPerTorqueSquared) {
        StopStretch stretch = StopStretch.of(piece, from, to);
        if (stretch.direction() == 0) {
            return PowerBend.NONE;
        }
        double half = (to - from) / 2;
        int parts = (int) Math.clamp(Math.ceil(duration / (to - from)), LEAST_PARTS, MOST_PARTS);
        double most = 0;
        double sum = 0;
        for (int k = 0; k < parts; k++) {
            double bend = over(stretch, (from + to) / 2, (k + 0.5) / parts, half, 0.5 / parts)
                    .power(lossPerTorqueSquared)
                    .bendByX(half);
            most = Math.max(most, bend);
            sum += bend;
        }
        return new PowerBend(most, sum * duration / parts);
    }
}
