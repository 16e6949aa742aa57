package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.duty.StopModel;
import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * One axis as the braking study sees it.
 *
 * @param index its place in the design's list of axes, for the findings' pointers
 * @param id its id in the design
 * @param busGroup name of the DC bus it shares; its own bus if absent
 * @param stopZone id of its stop zone; none if absent
 * @param driveUnit its drive unit
 * @param course speed and torque of its motor shaft over one cycle; empty if it stands still
 * @param stopModel its controlled stops from any instant; absent if it has none
 * @param throughTransformer whether a transformer gives its drive unit its rated voltage
 */
public record BrakingAxis(
        @Bounds(min = 0) int index,
        String id,
        @Nullable String busGroup,
        @Nullable String stopZone,
        DriveUnit driveUnit,
        Course course,
        @Nullable StopModel stopModel,
        boolean throughTransformer) {

    /** An axis fed straight from the mains. */
    public BrakingAxis(
            int index,
            String id,
            @Nullable String busGroup,
            @Nullable String stopZone,
            DriveUnit driveUnit,
            Course course,
            @Nullable StopModel stopModel) {
        this(index, id, busGroup, stopZone, driveUnit, course, stopModel, false);
    }

    /** JSON Pointer to the axis in the design. */
    String pointer() {
        return "/design/axes/" + index;
    }
}
