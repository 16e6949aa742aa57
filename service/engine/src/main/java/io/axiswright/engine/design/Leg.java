package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Acceleration;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * A part of a jog; exactly one member is stated.
 *
 * @param duration how long it lasts
 * @param distance how far it goes, signed like the speed
 * @param acceleration the acceleration or deceleration; not for the part at speed
 */
public record Leg(
        @Bounds(above = 0, max = 86400) @Nullable Time duration,
        @Nullable Displacement distance,
        @Bounds(above = 0) @Nullable Acceleration acceleration) {}
