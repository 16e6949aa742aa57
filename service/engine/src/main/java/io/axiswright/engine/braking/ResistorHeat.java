package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Temperature;

/**
 * Heat of one unit's resistor with the stops an hour on top of the cycle. Every stop adds the energy of the worst, at once
 * (nothing cools away meanwhile: safe); in periodic state the stops alone raise it to ΔT/(1 − e^(−t/τ)), ΔT = E/(m·c).
 *
 * @param stopsPerHour how many
 * @param stop energy of one stop, J
 * @param meanPower mean power with the stops, W
 * @param allowedPower what it may take for ever at this ambient: its rating, and what its thermal resistance lets through up to
 *     its limit, whichever is less, W
 * @param hottest highest temperature with the stops
 * @param tolerated most stops an hour that neither limit forbids; infinite without pulses
 */
record ResistorHeat(
        double stopsPerHour,
        double stop,
        double meanPower,
        double allowedPower,
        Temperature hottest,
        double tolerated) {

    private static final double HOUR = 3600;

    static ResistorHeat of(BrakingUnit unit, int count, GroupRun run, double stopsPerHour, Temperature ambient) {
        double stop = run.largestStop() / count;
        double cycle = run.meanBurned() / count;
        double capacity = unit.heatCapacity().si();
        double tau = capacity * unit.thermalResistance().si();
        double room = unit.resistorLimit().si() - ambient.si();
        double allowed = Math.min(
                unit.continuousPower().si(),
                Math.max(0, room / unit.thermalResistance().si()));
        double step = stop / capacity;
        double repeated = stopsPerHour == 0 ? 0 : step / -Math.expm1(-HOUR / stopsPerHour / tau);
        double cycleRise = run.cyclePeakRise();
        return new ResistorHeat(
                stopsPerHour,
                stop,
                cycle + stop * stopsPerHour / HOUR,
                allowed,
                new Temperature(ambient.si() + Math.max(run.peakRise(), cycleRise + repeated)),
                tolerated(stop, allowed - cycle, step / (room - cycleRise), tau));
    }

    /** Both the mean power and the temperature rise with the stops an hour, so each limit gives one number. */
    static double tolerated(double pulse, double sparePower, double shareOfRoom, double tau) {
        if (pulse <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        if (sparePower <= 0 || shareOfRoom >= 1 || shareOfRoom <= 0) {
            return 0;
        }
        return Math.min(HOUR * sparePower / pulse, HOUR / (-tau * Math.log1p(-shareOfRoom)));
    }
}
