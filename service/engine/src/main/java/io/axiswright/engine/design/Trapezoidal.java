package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * Constant acceleration, constant speed, constant deceleration. A share that is absent follows from what the move states;
 * an end of which nothing is stated is like the other.
 *
 * @param accelerationShare share of the move's time spent accelerating
 * @param decelerationShare share spent decelerating; both together at most 1
 */
@JsonTypeName("TRAPEZOIDAL")
public record Trapezoidal(
        @Bounds(above = 0, max = 1) @Nullable Double accelerationShare,
        @Bounds(above = 0, max = 1) @Nullable Double decelerationShare)
        implements MotionLaw {}
