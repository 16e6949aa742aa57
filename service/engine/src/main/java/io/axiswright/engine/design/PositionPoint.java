package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Time;

/**
 * A point of a course.
 *
 * @param time when
 * @param position position
 */
public record PositionPoint(@Bounds(max = 1000000) Time time, Displacement position) {}
