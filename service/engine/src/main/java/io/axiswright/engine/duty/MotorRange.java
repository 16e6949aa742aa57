package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;

/**
 * What a motor's shaft may do over a range of motions.
 *
 * @param speed its speed, rad/s
 * @param torque torque of the motor, its own inertia included, N·m
 */
record MotorRange(Enclosure speed, Enclosure torque) {

    /** The power it takes with a loss that goes with the square of torque, W/(N·m)². */
    Enclosure power(double lossPerTorqueSquared) {
        return torque.times(speed.plus(torque.times(lossPerTorqueSquared)));
    }
}
