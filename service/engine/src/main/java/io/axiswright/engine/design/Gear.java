package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A gearbox, belt step or chain step between motor and mechanism.
 *
 * @param ratio turns of its input per turn of its output
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param inertia its inertia at the input shaft
 * @param noLoadTorque torque its seals and bearings take at the input shaft whatever the load; none if absent
 */
public record Gear(
        @Bounds(above = 0, max = 10000) double ratio,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Bounds(min = 0) Inertia inertia,
        @Bounds(min = 0) @Nullable Torque noLoadTorque) {

    /** Without a torque of its own. */
    public Gear(double ratio, double efficiency, @Nullable Double backDrivingEfficiency, Inertia inertia) {
        this(ratio, efficiency, backDrivingEfficiency, inertia, null);
    }
}
