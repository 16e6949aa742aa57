package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;

/**
 * Between which currents a circuit-breaker begins to trip without delay, r.m.s. of a sinusoidal current as multiples of its
 * rating. By IEC 60898-1: type B 3 to 5, C 5 to 10, D 10 to 20 (as two public pages print them; the standard itself was not read).
 *
 * @param lower up to this multiple it does not trip without delay
 * @param upper from this multiple on it does; not below {@code lower}
 */
public record TrippingBand(
        @Bounds(above = 0, max = 100) double lower,
        @Bounds(above = 0, max = 100) double upper) {}
