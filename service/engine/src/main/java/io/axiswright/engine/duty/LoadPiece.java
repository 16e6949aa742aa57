package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * A stretch of an axis's cycle as the bare motor shaft sees it: the torque leaves out what turns with the motor, so that it
 * holds for every drive unit.
 *
 * @param start when it starts, s
 * @param duration how long it lasts, s
 * @param position position of the load, m or rad, over the time since the start
 * @param speed speed of the motor shaft, rad/s
 * @param acceleration its derivative, rad/s²
 * @param torque torque the load asks for at the motor shaft, N·m
 * @param pull torque the load asks for at the mechanism's shaft before any loss, N·m
 * @param effort the load behind it
 * @param slowest least magnitude of speed, rad/s
 * @param fastest greatest magnitude of speed, rad/s
 * @param hardest greatest magnitude of torque, N·m
 * @param steepest greatest magnitude of acceleration, rad/s²
 */
record LoadPiece(
        double start,
        double duration,
        Polynomial position,
        Polynomial speed,
        Polynomial acceleration,
        Polynomial torque,
        Polynomial pull,
        LoadEffort effort,
        double slowest,
        double fastest,
        double hardest,
        double steepest) {

    static LoadPiece of(
            double start,
            double duration,
            Polynomial position,
            Polynomial speed,
            Polynomial acceleration,
            Polynomial torque,
            Polynomial pull,
            LoadEffort effort) {
        double slowest = Double.POSITIVE_INFINITY;
        for (double t : speed.extremalPoints(0, duration)) {
            slowest = Math.min(slowest, Math.abs(speed.at(t)));
        }
        return new LoadPiece(
                start,
                duration,
                position,
                speed,
                acceleration,
                torque,
                pull,
                effort,
                slowest,
                speed.largestMagnitude(0, duration),
                torque.largestMagnitude(0, duration),
                acceleration.largestMagnitude(0, duration));
    }

    /** When it ends, s. */
    double end() {
        return start + duration;
    }

    /** The torque of a motor with the given inertia on its shaft, N·m. */
    Polynomial torque(double inertia) {
        return torque.plus(acceleration.times(inertia));
    }

    /** No torque of a motor with that inertia is larger than this, N·m. */
    double torqueBound(double inertia) {
        return hardest + inertia * steepest;
    }
}
