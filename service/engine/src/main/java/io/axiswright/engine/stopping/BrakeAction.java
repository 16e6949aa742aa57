package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import org.jspecify.annotations.Nullable;

/**
 * What a brake on the motor shaft does after power-off.
 *
 * @param delay from power-off until it brakes, s; infinite without a brake
 * @param torque torque it brakes with, N·m
 */
record BrakeAction(double delay, double torque) {

    static final BrakeAction NONE = new BrakeAction(Double.POSITIVE_INFINITY, 0);

    /** With no share of its torque lost: what the parts between it and the load must bear. */
    static double fullTorque(HoldingBrake brake) {
        return brake.torque().si();
    }

    static BrakeAction of(@Nullable HoldingBrake brake) {
        if (brake == null) {
            return NONE;
        }
        return new BrakeAction(brake.engageDelay().si(), brake.brakingTorque());
    }
}
