package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.catalogue.HoldingBrake;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What one axis takes from the control supply at the far end of its spur: its drive's logic at constant power, its brake at
 * constant resistance.
 *
 * @param axis id of the axis
 * @param axisIndex its place in the design's list of axes
 * @param driveUnit its drive unit
 * @param brake its holding brake; none if absent
 * @param spur the cable from the gateway to it
 * @param keepAlive whether its position must survive a loss of mains
 * @param restTime from the demand of its controlled stop until it rests and its brake holds, all of which needs control power;
 *     absent if it stops without
 */
public record ControlLoad(
        String axis,
        @Bounds(min = 0, max = 1023) int axisIndex,
        DriveUnit driveUnit,
        @Nullable HoldingBrake brake,
        LaidCable spur,
        boolean keepAlive,
        @Bounds(min = 0) @Nullable Time restTime) {

    /** An axis that stops without control power. */
    public ControlLoad(
            String axis,
            int axisIndex,
            DriveUnit driveUnit,
            @Nullable HoldingBrake brake,
            LaidCable spur,
            boolean keepAlive) {
        this(axis, axisIndex, driveUnit, brake, spur, keepAlive, null);
    }
}
