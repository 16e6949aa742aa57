package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * The supply at the machine's terminals.
 *
 * @param system wires of the supply
 * @param voltage nominal voltage, line to line (line to neutral for one phase two-wire)
 * @param lowTolerance how far it may fall, as a fraction
 * @param highTolerance how far it may rise, as a fraction
 * @param frequency nominal frequency
 * @param prospectiveFaultCurrent highest fault current at the terminals, of whatever kind of fault
 * @param minimumFaultCurrent lowest current of a three-phase fault at the terminals (of a fault across the line for one
 *     phase); if absent, what the impedance behind {@code prospectiveFaultCurrent} gives at the lowest voltage
 * @param faultResistanceRatio resistance over reactance (R/X) of the supply up to the terminals; if absent, 0.1 for the
 *     highest fault currents and the angle of the conductors, the worst there is, for the lowest
 * @param earthing how the supply is earthed; if absent, TN, which has the highest earth-fault currents
 * @param earthFaultLoopImpedance highest impedance of the earth-fault loop outside the machine, from the terminals back to
 *     them (Z_e; in TT with the resistance of both earth electrodes); if absent, disconnection cannot be confirmed
 */
public record Mains(
        SupplySystem system,
        @Bounds(above = 0, max = 1000) Voltage voltage,
        @Bounds(min = 0, max = 0.5) double lowTolerance,
        @Bounds(min = 0, max = 0.5) double highTolerance,
        @Bounds(min = 40, max = 70) Frequency frequency,
        @Bounds(above = 0, max = 200000) Current prospectiveFaultCurrent,
        @Bounds(above = 0, max = 200000) @Nullable Current minimumFaultCurrent,
        @Bounds(min = 0, max = 100) @Nullable Double faultResistanceRatio,
        @Nullable SystemEarthing earthing,
        @Bounds(above = 0, max = 10000) @Nullable Resistance earthFaultLoopImpedance) {

    /** A supply of which no more is known than its highest fault current. */
    public Mains(
            SupplySystem system,
            Voltage voltage,
            double lowTolerance,
            double highTolerance,
            Frequency frequency,
            Current prospectiveFaultCurrent) {
        this(system, voltage, lowTolerance, highTolerance, frequency, prospectiveFaultCurrent, null, null, null, null);
    }

    /** Lowest voltage in normal operation. */
    public Voltage low() {
        return new Voltage(voltage.si() * (1 - lowTolerance));
    }

    /** Highest voltage in normal operation. */
    public Voltage high() {
        return new Voltage(voltage.si() * (1 + highTolerance));
    }
}
