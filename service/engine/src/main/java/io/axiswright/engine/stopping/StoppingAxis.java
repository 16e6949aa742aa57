package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * One axis as the stopping study sees it.
 *
 * @param index its place in the design's list of axes, for the findings' pointers
 * @param id its id in the design
 * @param stopZone id of its stop zone; none if absent
 * @param coasting its cycle and the load it would coast under
 * @param brake its holding brake; none if absent
 * @param gearStopTorque highest torque the output of its gear unit bears in a stop on demand; absent without gear unit
 */
public record StoppingAxis(
        @Bounds(min = 0) int index,
        String id,
        @Nullable String stopZone,
        Coasting coasting,
        @Nullable HoldingBrake brake,
        @Nullable Torque gearStopTorque) {

    /** JSON Pointer to the axis in the design. */
    String pointer() {
        return "/design/axes/" + index;
    }
}
