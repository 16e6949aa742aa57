package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * The braking unit chosen, and how it stands to its limits. All figures are for one unit; several in parallel share alike.
 *
 * @param count how many, in parallel
 * @param smallestResistance smallest nominal resistance that, at the lower end of its tolerance, its chopper's current allows at
 *     switch-on: V_on/(I·(1 − tolerance))
 * @param largestResistance largest nominal resistance with which, at the upper end of its tolerance, the bus never rises above
 *     switch-on: V_on²/(p_peak·(1 + tolerance)); more lets it rise, but not to the trip; absent if nothing is returned
 * @param chopperCurrent highest current, resistance at the lower end of its tolerance
 * @param peakPower highest power of its resistor
 * @param pulseEnergy energy of its largest pulse in any case: all that goes into its resistor in one run of return, stop or descent,
 *     however long; runs that follow each other after less time than the earlier has lasted are one
 * @param meanPower mean power, the stops an hour included
 * @param allowedMeanPower what it may take for ever at this ambient
 * @param stopsPerHour stops an hour counted with
 * @param toleratedStopsPerHour most stops an hour it stands; absent if stops do not heat it
 * @param hottest highest temperature of its resistor, the stops an hour included
 * @param cableCurrent effective current of the cable to its resistor: √(P_mean/R)
 * @param maxCableLength longest cable to its resistor; absent if none is stated
 * @param failurePeakVoltage highest voltage the bus would reach with one unit dead, did nothing trip
 * @param tripsOnFailure whether that is at or above the trip
 */
public record ChosenUnit(
        int count,
        Resistance smallestResistance,
        @Nullable Resistance largestResistance,
        Current chopperCurrent,
        Power peakPower,
        Energy pulseEnergy,
        Power meanPower,
        Power allowedMeanPower,
        double stopsPerHour,
        @Nullable Double toleratedStopsPerHour,
        Temperature hottest,
        Current cableCurrent,
        @Nullable Length maxCableLength,
        Voltage failurePeakVoltage,
        boolean tripsOnFailure) {}
