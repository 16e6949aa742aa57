package io.axiswright.engine.stopping;

import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.duty.LimitUse;
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
 * @param hardestStop the controlled stop of its zone that uses most of its drive unit; absent if it makes none
 */
public record StoppingAxis(
        @Bounds(min = 0) int index,
        String id,
        @Nullable String stopZone,
        Coasting coasting,
        @Nullable HoldingBrake brake,
        @Nullable Torque gearStopTorque,
        @Nullable LimitUse hardestStop) {

    /** Whether its drive unit cannot stop it in the time of its zone. */
    boolean stopTooHard() {
        return hardestStop != null && hardestStop.broken();
    }

    /** JSON Pointer to the axis in the design. */
    String pointer() {
        return "/design/axes/" + index;
    }
}
