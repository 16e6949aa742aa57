package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;

/**
 * Clamp hub closed by screws.
 *
 * @param screws number of clamping screws
 * @param screwPreload preload of each
 * @param friction coefficient of friction in the joint
 */
@JsonTypeName("CLAMP")
public record ClampFastening(
        @Bounds(min = 1, max = 24) int screws,
        @Bounds(above = 0) Force screwPreload,
        @Bounds(above = 0, max = 1) double friction)
        implements Fastening {}
