package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * What a mechanism's load asks of its shaft over a stretch of motion, before any loss in the mechanism. All polynomials go over
 * the time since the start of the piece.
 *
 * @param start when it starts, from the start of the stretch, s
 * @param duration how long it lasts, s
 * @param position position of the load, m or rad
 * @param speed speed of the mechanism's shaft, rad/s
 * @param acceleration its derivative, rad/s²
 * @param torque torque, N·m
 */
record ShaftPiece(
        double start,
        double duration,
        Polynomial position,
        Polynomial speed,
        Polynomial acceleration,
        Polynomial torque) {

    /** The one piece of a motion that the shaft follows evenly. */
    static ShaftPiece of(LoadMotion motion, double travel, Polynomial torque) {
        Polynomial speed = motion.position().derivative().times(1 / travel);
        return new ShaftPiece(0, motion.duration(), motion.position(), speed, speed.derivative(), torque);
    }

    /** One at rest. */
    static ShaftPiece resting(double start, double duration, double position, Polynomial torque) {
        return new ShaftPiece(start, duration, Polynomial.of(position), Polynomial.ZERO, Polynomial.ZERO, torque);
    }

    /** The same with a torque that is its own times an effort over the time since the stretch began. */
    ShaftPiece times(Polynomial effort) {
        return new ShaftPiece(start, duration, position, speed, acceleration, torque.times(effort.shifted(start)));
    }
}
