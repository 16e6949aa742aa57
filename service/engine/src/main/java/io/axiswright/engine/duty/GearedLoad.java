package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.GearChoice;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An axis with one gear unit, or without any, at the motor: what it asks of any drive unit is worked out once for all of
 * them. What the output shaft of the gear unit bears depends on what lies beyond it only, so it is the same for every gear
 * unit and every motor.
 *
 * @param gear the gear unit; absent if only the stated gears are used
 * @param load what the axis asks at the motor shaft
 * @param sums its integrals
 * @param samples a few instants of it
 * @param peakOutput greatest torque at the output shaft of the gear unit, N·m; 0 without one
 * @param rmsOutput rms torque there, N·m; 0 without one
 */
record GearedLoad(
        @Nullable GearUnit gear, AxisLoad load, LoadSums sums, Samples samples, double peakOutput, double rmsOutput) {

    /** Without a gear unit, then with each that may be chosen, in their order. */
    static List<GearedLoad> all(Axis axis, List<GearUnit> gears) {
        List<GearedLoad> all = new ArrayList<>();
        all.add(of(axis, null, CycleChange.NONE));
        if (axis.drive().gear() == GearChoice.CHOOSE) {
            Output output = gears.isEmpty() ? Output.NONE : Output.of(axis, CycleChange.NONE);
            gears.forEach(gear -> all.add(of(axis, gear, output, CycleChange.NONE)));
        }
        return all;
    }

    /** With one gear unit or none, the cycle run otherwise than stated. */
    static GearedLoad of(Axis axis, @Nullable GearUnit gear, CycleChange change) {
        return of(axis, gear, gear == null ? Output.NONE : Output.of(axis, change), change);
    }

    private static GearedLoad of(Axis axis, @Nullable GearUnit gear, Output output, CycleChange change) {
        AxisLoad load = AxisLoad.of(gear == null ? axis : axis.withMotorGear(gear.gear()), change);
        return new GearedLoad(
                gear,
                load,
                LoadSums.of(load.pieces(), load.period()),
                Samples.of(load.pieces()),
                output.peak,
                output.rms);
    }

    /** Whether its gear unit, if any, can be flanged to a drive unit of that frame size. */
    boolean fits(String frameSize) {
        return gear == null || gear.frameSizes().contains(frameSize);
    }

    /** How much of a limit of the gear unit is used; 0 without one. */
    double use(DutyLimit limit) {
        if (gear == null) {
            return 0;
        }
        return switch (limit) {
            case GEAR_SPEED ->
                DutyLimit.use(sums.peakSpeed(), gear.highestInputSpeed().si());
            case GEAR_NOMINAL -> DutyLimit.use(rmsOutput, gear.nominalTorque().si());
            case GEAR_PEAK -> DutyLimit.use(peakOutput, gear.peakTorque().si());
            default -> 0;
        };
    }

    /**
     * Torque at the shaft that a gear unit would turn. A load that a brake at the motor holds hangs on the gear unit all the
     * same, so the brake is left out; losses that would help to hold it are not counted on.
     */
    private record Output(double peak, double rms) {

        static final Output NONE = new Output(0, 0);

        static Output of(Axis axis, CycleChange change) {
            AxisLoad load = AxisLoad.of(axis.with(axis.drive().withoutBrake()), change);
            double inertia = load.drivetrain().gearInertia();
            double peak = load.holdingTorque();
            for (LoadPiece piece : load.pieces()) {
                peak = Math.max(
                        peak,
                        Extreme.ofMagnitude(piece.torque(inertia), 0, piece.duration())
                                .size());
            }
            return new Output(peak, LoadSums.of(load.pieces(), load.period()).rmsTorque(inertia));
        }
    }
}
