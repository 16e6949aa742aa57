package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One braking unit tried on one bus.
 *
 * @param unit the unit
 * @param count how many of it, in parallel
 * @param run the cases with it at work; absent if it was ruled out before
 * @param rejected the first limit it broke; absent if it fits
 */
record UnitTrial(
        BrakingUnit unit,
        int count,
        @Nullable GroupRun run,
        @Nullable RejectedUnit rejected) {

    private record Check(BrakingLimit limit, Quantity value, Quantity bound, boolean broken) {}

    /** Tries a unit. */
    static UnitTrial of(
            BrakingUnit unit, int count, Bus bus, GroupLoads loads, Temperature ambient, double stopsPerHour) {
        RejectedUnit early = firstBroken(unit, count, beforehand(unit, bus));
        if (early != null) {
            return new UnitTrial(unit, count, null, early);
        }
        GroupRun run = loads.on(bus, Chopper.of(unit, count, bus));
        var heat = ResistorHeat.of(unit, count, run, stopsPerHour, ambient);
        return new UnitTrial(unit, count, run, firstBroken(unit, count, atWork(unit, count, bus, run, heat)));
    }

    /** Highest current its chopper carries at a voltage, resistance at the lower end of its tolerance, A. */
    static double current(BrakingUnit unit, double voltage) {
        return voltage / (unit.resistance().si() * (1 - unit.resistanceTolerance()));
    }

    private static List<Check> beforehand(BrakingUnit unit, Bus bus) {
        double on = unit.chopperOn().si();
        double trip = bus.voltage(bus.tripEnergy());
        double floor = bus.voltage(bus.floorEnergy());
        return List.of(
                new Check(BrakingLimit.SWITCH_ON_ABOVE_TRIP, unit.chopperOn(), new Voltage(trip), on >= trip),
                new Check(
                        BrakingLimit.SWITCH_OFF_BELOW_LINE,
                        unit.chopperOff(),
                        new Voltage(floor),
                        unit.chopperOff().si() <= floor),
                currentCheck(unit, on));
    }

    private static List<Check> atWork(BrakingUnit unit, int count, Bus bus, GroupRun run, ResistorHeat heat) {
        Voltage peak = new Voltage(bus.voltage(run.peakEnergy()));
        Energy pulse = new Energy(run.largestPulse() / count);
        return List.of(
                new Check(BrakingLimit.BUS_VOLTAGE, peak, new Voltage(bus.voltage(bus.tripEnergy())), !run.fits(bus)),
                currentCheck(unit, conductingVoltage(unit, bus, run)),
                atMost(BrakingLimit.PULSE_ENERGY, pulse, unit.pulseEnergy()),
                atMost(BrakingLimit.CONTINUOUS_POWER, new Power(heat.meanPower()), new Power(heat.allowedPower())),
                atMost(BrakingLimit.RESISTOR_TEMPERATURE, heat.hottest(), unit.resistorLimit()));
    }

    private static double conductingVoltage(BrakingUnit unit, Bus bus, GroupRun run) {
        return Math.max(unit.chopperOn().si(), bus.voltage(run.peakEnergy()));
    }

    private static Check currentCheck(BrakingUnit unit, double voltage) {
        return atMost(BrakingLimit.CHOPPER_CURRENT, new Current(current(unit, voltage)), unit.chopperCurrent());
    }

    private static Check atMost(BrakingLimit limit, Quantity value, Quantity bound) {
        return new Check(limit, value, bound, value.si() > bound.si());
    }

    private static @Nullable RejectedUnit firstBroken(BrakingUnit unit, int count, List<Check> checks) {
        for (Check check : checks) {
            if (check.broken()) {
                return new RejectedUnit(unit.id(), count, check.limit(), check.value(), check.bound());
            }
        }
        return null;
    }
}
