package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A detection zone parallel to the direction of approach, such as a scanner's or a lying light curtain's.
 *
 * @param detectionCapability the smallest object it is sure to see
 * @param height height of the zone above the floor; who crawls below it must still be seen, so that it must be 15·(detection
 *     capability − 50 mm) at least
 */
@JsonTypeName("PARALLEL_FIELD")
public record ParallelField(
        @Bounds(above = 0, max = 0.2) Length detectionCapability,
        @Bounds(min = 0, max = 1) Length height) implements Detection {}
