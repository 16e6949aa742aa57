package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;

/**
 * A point of a course.
 *
 * @param time when
 * @param speed speed, signed
 * @param effort force or torque that drives in the positive direction
 */
public record TorquePoint(@Bounds(max = 1000000) Time time, Velocity speed, Effort effort) {}
