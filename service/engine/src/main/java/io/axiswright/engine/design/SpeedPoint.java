package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;

/**
 * A point of a course.
 *
 * @param time when
 * @param speed speed, signed
 */
public record SpeedPoint(@Bounds(max = 1000000) Time time, Velocity speed) {}
