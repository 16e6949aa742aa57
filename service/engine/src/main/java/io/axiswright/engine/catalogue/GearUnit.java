package io.axiswright.engine.catalogue;

import io.axiswright.engine.design.Gear;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Gearbox that is flanged to a drive unit.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param frameSizes frame sizes of the drive units it fits
 * @param ratio turns of its input per turn of its output
 * @param efficiency efficiency when the motor drives
 * @param backDrivingEfficiency efficiency when the load drives; 2 − 1/efficiency if absent; 0 or below: self-locking
 * @param inertia its inertia at the input shaft
 * @param noLoadTorque torque its seals and bearings take at the input shaft whatever the load; none if absent
 * @param nominalTorque rms torque its output shaft bears for ever
 * @param peakTorque highest torque its output shaft bears in every cycle
 * @param highestInputSpeed highest speed of its input shaft
 * @param emergencyTorque highest torque its output shaft bears now and then, in a stop on demand; {@code peakTorque} if absent
 */
public record GearUnit(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        @Count(min = 1, max = 50) List<String> frameSizes,
        @Bounds(above = 0, max = 10000) double ratio,
        @Bounds(above = 0, max = 1) double efficiency,
        @Bounds(min = 0, max = 1) @Nullable Double backDrivingEfficiency,
        @Bounds(min = 0) Inertia inertia,
        @Bounds(min = 0) @Nullable Torque noLoadTorque,
        @Bounds(above = 0) Torque nominalTorque,
        @Bounds(above = 0) Torque peakTorque,
        @Bounds(above = 0) AngularSpeed highestInputSpeed,
        @Bounds(above = 0) @Nullable Torque emergencyTorque)
        implements Item {

    /** Highest torque its output shaft bears in a stop on demand. */
    public Torque stopTorque() {
        return emergencyTorque == null ? peakTorque : emergencyTorque;
    }

    /** What it does to what passes through it. */
    public Gear gear() {
        return new Gear(ratio, efficiency, backDrivingEfficiency, inertia, noLoadTorque);
    }
}
