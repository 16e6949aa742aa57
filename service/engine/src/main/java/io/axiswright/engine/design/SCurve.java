package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;

/**
 * Trapezoid with linear acceleration ramps.
 *
 * @param accelerationShare share of the move's time spent in each acceleration phase
 * @param jerkShare share of each acceleration phase spent in its two ramps together
 */
@JsonTypeName("S_CURVE")
public record SCurve(
        @Bounds(above = 0, max = 0.5) double accelerationShare,
        @Bounds(above = 0, max = 1) double jerkShare) implements MotionLaw {}
