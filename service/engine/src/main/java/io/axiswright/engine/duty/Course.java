package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * Speed and torque of a motor shaft over time, in exact pieces. Positive torque times positive speed is motoring.
 *
 * @param pieces the pieces, end to end, the first starting at 0 s
 */
public record Course(List<Piece> pieces) {

    /**
     * A stretch of time over which both are polynomials of the time since its start.
     *
     * @param start when it starts, s
     * @param duration how long it lasts, s
     * @param speed speed of the motor shaft, rad/s
     * @param torque torque of the motor at its shaft, its own inertia included, N·m
     */
    public record Piece(double start, double duration, Polynomial speed, Polynomial torque) {

        /** When it ends, s. */
        public double end() {
            return start + duration;
        }
    }

    /** Keeps the pieces from being changed. */
    public Course {
        pieces = List.copyOf(pieces);
    }

    /** How long the whole course lasts, s. */
    public double duration() {
        return pieces.isEmpty() ? 0 : pieces.getLast().end();
    }
}
