package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;

/**
 * Constant acceleration, constant speed, constant deceleration.
 *
 * @param accelerationShare share of the move's time spent accelerating
 * @param decelerationShare share spent decelerating; both together at most 1
 */
@JsonTypeName("TRAPEZOIDAL")
public record Trapezoidal(
        @Bounds(above = 0, max = 1) double accelerationShare,
        @Bounds(above = 0, max = 1) double decelerationShare) implements MotionLaw {}
