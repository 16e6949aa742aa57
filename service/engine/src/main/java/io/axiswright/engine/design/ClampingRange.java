package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * Outer diameters a cable gland holds and seals.
 *
 * @param minimum the smallest
 * @param maximum the largest
 */
public record ClampingRange(
        @Bounds(min = 0, max = 0.2) Length minimum,
        @Bounds(above = 0, max = 0.2) Length maximum) {}
