package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.ShaftMounting;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Torque;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * One axis as its mounting sees it.
 *
 * @param axis id of the axis
 * @param axisIndex its place in the design's list of axes
 * @param mounting how its drive unit is held and joined to the machine
 * @param driveUnit its drive unit
 * @param peakTorque largest torque of the cycle through the fastening in either direction; its sign does not matter
 * @param stopTorque torque of the hardest controlled stop on demand; absent if there is none
 * @param brakeTorque torque of its holding brake, which it meets in full where the brake closes while the shaft turns and next to
 *     all inertia is the load's; absent without one
 * @param reversing whether the torque changes its direction within the cycle
 */
public record MountedAxis(
        String axis,
        @Bounds(min = 0, max = 1023) int axisIndex,
        ShaftMounting mounting,
        DriveUnit driveUnit,
        Torque peakTorque,
        @Nullable Torque stopTorque,
        @Nullable Torque brakeTorque,
        boolean reversing) {

    /** What asks most of the fastening; the cycle where others ask no more. */
    FasteningLoad decidingLoad() {
        double cycle = Math.abs(peakTorque.si());
        double stop = stopTorque == null ? 0 : Math.abs(stopTorque.si());
        double brake = brakeTorque == null ? 0 : brakeTorque.si();
        if (cycle >= Math.max(stop, brake)) {
            return FasteningLoad.CYCLE;
        }
        return stop >= brake ? FasteningLoad.STOP : FasteningLoad.HOLDING_BRAKE;
    }

    /** The greatest torque through the fastening, N·m. */
    double greatestTorque() {
        Torque deciding = switch (decidingLoad()) {
            case CYCLE -> peakTorque;
            case STOP -> Objects.requireNonNull(stopTorque);
            case HOLDING_BRAKE -> Objects.requireNonNull(brakeTorque);
        };
        return Math.abs(deciding.si());
    }
}
