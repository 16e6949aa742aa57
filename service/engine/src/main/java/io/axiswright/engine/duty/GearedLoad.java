package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.GearUnit;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.GearChoice;
import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An axis with one gear unit, or without any, at the motor: what it asks of any drive unit is worked out once for all of
 * them.
 *
 * @param gear the gear unit; absent if only the stated gears are used
 * @param zone the stop zone whose controlled stop the axis makes; absent if it makes none
 * @param load what the axis asks at the motor shaft
 * @param sums its integrals
 * @param samples a few instants of it
 * @param holds standstills in which the motor holds torque
 * @param output what the output shaft of the gear unit bears; absent without one
 */
record GearedLoad(
        @Nullable GearUnit gear,
        @Nullable StopZone zone,
        AxisLoad load,
        LoadSums sums,
        Samples samples,
        List<Hold> holds,
        @Nullable GearOutput output) {

    /** With the gear unit it names; else without any, then with each that may be chosen, in their order. */
    static List<GearedLoad> all(Axis axis, DutyRequest request) {
        StopZone zone = stopping(axis, request.stopZones());
        List<GearUnit> gears = gears(axis, request.gearUnits());
        CycleChange asked = CycleChange.NONE.remembering();
        @Nullable GearOutput output = gears.isEmpty() ? null : GearOutput.of(axis, zone, asked);
        List<GearedLoad> all = new ArrayList<>();
        if (axis.drive().gearUnit() == null) {
            all.add(of(axis, null, zone, null, asked));
        }
        gears.forEach(gear -> all.add(of(axis, gear, zone, output, asked)));
        return all;
    }

    private static List<GearUnit> gears(Axis axis, List<GearUnit> stock) {
        String named = axis.drive().gearUnit();
        if (named != null) {
            return stock.stream().filter(gear -> gear.id().equals(named)).toList();
        }
        return axis.drive().gear() == GearChoice.CHOOSE ? stock : List.of();
    }

    private static @Nullable StopZone stopping(Axis axis, List<StopZone> zones) {
        return zones.stream()
                .filter(zone -> zone.id().equals(axis.stopZone()) && zone.category() != StopCategory.CATEGORY_0)
                .findFirst()
                .orElse(null);
    }

    /** The same axis with the same gear unit, the cycle run otherwise than stated. */
    GearedLoad changed(Axis axis, CycleChange change) {
        CycleChange same = change.remembering();
        @Nullable GearOutput other = gear == null ? null : GearOutput.of(axis, zone, same);
        return of(axis, gear, zone, other, same);
    }

    /** The axis with its gear unit among its gears. */
    Axis geared(Axis axis) {
        return geared(axis, gear);
    }

    private static Axis geared(Axis axis, @Nullable GearUnit gear) {
        return gear == null ? axis : axis.withMotorGear(gear.gear());
    }

    private static GearedLoad of(
            Axis axis,
            @Nullable GearUnit gear,
            @Nullable StopZone zone,
            @Nullable GearOutput output,
            CycleChange change) {
        AxisLoad load = AxisLoad.of(geared(axis, gear), change);
        return new GearedLoad(
                gear,
                zone,
                load,
                LoadSums.of(load.pieces(), load.period()),
                Samples.of(load.pieces()),
                Hold.of(load.pieces()),
                output);
    }

    /** Whether its gear unit, if any, can be flanged to a drive unit of that frame size. */
    boolean fits(String frameSize) {
        return gear == null || gear.frameSizes().contains(frameSize);
    }

    /** How much of a limit of the gear unit is used; 0 without one. */
    double use(DutyLimit limit) {
        if (gear == null || output == null) {
            return 0;
        }
        return switch (limit) {
            case GEAR_SPEED ->
                DutyLimit.use(sums.peakSpeed(), gear.highestInputSpeed().si());
            case GEAR_NOMINAL ->
                DutyLimit.use(output.rms(), gear.nominalTorque().si());
            case GEAR_PEAK -> DutyLimit.use(output.peak(), gear.peakTorque().si());
            case GEAR_STOP -> DutyLimit.use(output.stop(), gear.stopTorque().si());
            default -> 0;
        };
    }

    /** Whether a controlled stop breaks the limit of the gear unit; the hardest one need not be found for that. */
    boolean breaksInStop() {
        return gear != null
                && output != null
                && output.stopExceeds(gear.stopTorque().si() * (1 + DutyLimit.ROUNDING));
    }
}
