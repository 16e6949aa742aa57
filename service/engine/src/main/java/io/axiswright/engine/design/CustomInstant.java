package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;

/**
 * A point of a mechanism's course over time.
 *
 * @param time time since the cycle began
 * @param torque torque it exerts then against the positive direction, at rest as in motion
 * @param inertia its inertia then
 */
public record CustomInstant(
        @Bounds(min = 0, max = 86400) Time time,
        Torque torque,
        @Bounds(min = 0) Inertia inertia) {}
