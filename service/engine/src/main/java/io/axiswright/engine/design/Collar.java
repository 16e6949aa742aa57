package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A sliding thrust bearing.
 *
 * @param friction its friction coefficient
 * @param meanDiameter the diameter its friction acts at
 */
public record Collar(
        @Bounds(min = 0, max = 2) double friction,
        @Bounds(above = 0, max = 2) Length meanDiameter) {}
