package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Torque;

/**
 * A point of a mechanism's curves.
 *
 * @param angle angle of its shaft
 * @param torque torque it exerts there against the positive direction, at rest as in motion
 * @param inertia its inertia there
 */
public record CustomPoint(
        Angle angle, Torque torque, @Bounds(min = 0) Inertia inertia) {}
