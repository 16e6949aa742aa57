package io.axiswright.engine.topology;

import io.axiswright.engine.design.Position;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Frequency;
import org.jspecify.annotations.Nullable;

/**
 * What the network has to know of an axis.
 *
 * @param id the caller's own name for it, unique
 * @param position where its drive unit stands
 * @param stopZone id of its stop zone; none if absent
 * @param holdingBrake whether a gateway has to switch a holding brake for it
 * @param commandRate commands it is sent per second
 * @param index its place among the design's axes, for pointers
 */
public record NetworkAxis(
        String id,
        Position position,
        @Nullable String stopZone,
        boolean holdingBrake,
        @Bounds(above = 0, max = 100000) Frequency commandRate,
        @Bounds(min = 0) int index) {

    /** JSON Pointer to the axis in the request. */
    String pointer() {
        return "/design/axes/" + index;
    }
}
