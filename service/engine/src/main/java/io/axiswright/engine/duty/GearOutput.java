package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopZone;
import org.jspecify.annotations.Nullable;

/**
 * What the output shaft of a gear unit at the motor bears. It depends on what lies beyond it only, so it is the same for every
 * gear unit and every motor.
 *
 * @param peak greatest torque in the cycle, N·m
 * @param rms rms torque over the cycle, N·m
 * @param stop greatest torque in a controlled stop, N·m; 0 if it makes none
 * @param stopInstant when in the cycle that stop begins, s
 */
record GearOutput(double peak, double rms, double stop, double stopInstant) {

    static final GearOutput NONE = new GearOutput(0, 0, 0, 0);

    /**
     * Of an axis without the gear unit. A load that a brake at the motor holds hangs on the gear unit all the same, so the brake
     * is left out; losses that would help to hold it are not counted on.
     *
     * @param zone the zone whose controlled stop it makes; none if absent
     */
    static GearOutput of(Axis axis, @Nullable StopZone zone, CycleChange change) {
        AxisLoad load = AxisLoad.of(axis.with(axis.drive().withoutBrake()), change);
        double inertia = load.drivetrain().gearInertia();
        LoadSums sums = LoadSums.of(load.pieces(), load.period());
        HardestStop stop = HardestStop.of(load, sums.peakSpeed(), inertia, zone, StopMeasure.TORQUE);
        return new GearOutput(
                Math.max(load.holdingTorque(), StopMeasure.highest(load.course(inertia))),
                sums.rmsTorque(inertia),
                stop.size(),
                stop.instant());
    }
}
