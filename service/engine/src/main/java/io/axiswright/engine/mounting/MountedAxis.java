package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.ShaftMounting;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Torque;

/**
 * One axis as its mounting sees it.
 *
 * @param axis id of the axis
 * @param axisIndex its place in the design's list of axes
 * @param mounting how its drive unit is held and joined to the machine
 * @param driveUnit its drive unit
 * @param peakTorque largest torque through the fastening in either direction; its sign does not matter
 * @param reversing whether the torque changes its direction within the cycle
 */
public record MountedAxis(
        String axis,
        @Bounds(min = 0, max = 1023) int axisIndex,
        ShaftMounting mounting,
        DriveUnit driveUnit,
        Torque peakTorque,
        boolean reversing) {}
