package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;

/**
 * What the mechanism's shaft may do and feel over a range of motions, before any loss in the mechanism.
 *
 * @param speed its speed, rad/s
 * @param acceleration its acceleration, rad/s²
 * @param torque its torque, N·m
 */
record ShaftRange(Enclosure speed, Enclosure acceleration, Enclosure torque) {}
