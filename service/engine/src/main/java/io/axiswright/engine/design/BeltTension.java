package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Force;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the strands of a toothed belt.
 *
 * @param pretension pull in each strand at rest; that no strand goes slack is not checked if absent
 * @param workingLoad largest pull a strand may have
 */
public record BeltTension(
        @Bounds(min = 0) @Nullable Force pretension,
        @Bounds(above = 0) Force workingLoad) {}
