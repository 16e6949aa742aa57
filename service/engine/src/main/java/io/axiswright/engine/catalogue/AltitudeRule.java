package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * How power electronics lose current in thin air.
 *
 * @param above up to this altitude they have all of it
 * @param sharePerHundredMetres share they lose for every 100 m more, as a fraction
 */
public record AltitudeRule(
        @Bounds(min = 0, max = 5000) Length above,
        @Bounds(above = 0, max = 0.1) double sharePerHundredMetres) {}
