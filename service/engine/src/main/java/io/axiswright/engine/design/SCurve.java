package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * Trapezoid with linear acceleration ramps, the same at both ends. A share that is absent follows from what the move states.
 *
 * @param accelerationShare share of the move's time spent in each acceleration phase
 * @param jerkShare share of each acceleration phase spent in its two ramps together
 */
@JsonTypeName("S_CURVE")
public record SCurve(
        @Bounds(above = 0, max = 0.5) @Nullable Double accelerationShare,
        @Bounds(above = 0, max = 1) @Nullable Double jerkShare)
        implements MotionLaw {}
