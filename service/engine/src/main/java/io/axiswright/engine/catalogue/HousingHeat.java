package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;

/**
 * The slow body behind a winding: with it, the winding's own time constant is that over its housing.
 *
 * @param riseShare share of the rated rise of the winding that is the housing's over the ambient
 * @param timeConstant thermal time constant of the housing
 */
public record HousingHeat(
        @Bounds(above = 0, max = 1) double riseShare,
        @Bounds(above = 0, max = 1000000) Time timeConstant) {}
