package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;

/**
 * Keyless bushing: screws draw two cones together, which press on shaft and hub all round.
 *
 * @param screws number of its screws
 * @param screwPreload preload of each
 * @param coneAngle half the angle of the cone: that of its surface to the shaft
 * @param friction coefficient of friction, of the cones and on the shaft
 */
@JsonTypeName("BUSHING")
public record BushingFastening(
        @Bounds(min = 1, max = 24) int screws,
        @Bounds(above = 0) Force screwPreload,
        @Bounds(above = 0, max = 0.7853981633974483) Angle coneAngle,
        @Bounds(above = 0, max = 1) double friction)
        implements Fastening {}
