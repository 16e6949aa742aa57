package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;

/**
 * A point of a course.
 *
 * @param time when
 * @param speed speed, signed
 */
public record SpeedPoint(Time time, Velocity speed) {}
