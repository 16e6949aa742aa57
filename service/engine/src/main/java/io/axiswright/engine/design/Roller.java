package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;

/**
 * Something round that a belt turns.
 *
 * @param diameter diameter at which the belt runs
 * @param inertia its inertia about its own axis
 */
public record Roller(
        @Bounds(above = 0, max = 5) Length diameter,
        @Bounds(min = 0) Inertia inertia) {}
