package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Torque;

/**
 * A point of a torque–speed curve.
 *
 * @param speed speed
 * @param torque torque available at it
 */
public record CurvePoint(
        @Bounds(min = 0) AngularSpeed speed,
        @Bounds(min = 0) Torque torque) {}
