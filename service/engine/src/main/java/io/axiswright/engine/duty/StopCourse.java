package io.axiswright.engine.duty;

/**
 * A controlled stop of one axis, begun at some instant of its cycle.
 *
 * @param instant when in the cycle it begins, s
 * @param course speed and torque from the start of deceleration to rest
 */
public record StopCourse(double instant, Course course) {}
