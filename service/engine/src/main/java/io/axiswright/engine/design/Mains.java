package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Voltage;

/**
 * The supply at the machine's terminals.
 *
 * @param system wires of the supply
 * @param voltage nominal voltage, line to line (line to neutral for one phase two-wire)
 * @param lowTolerance how far it may fall, as a fraction
 * @param highTolerance how far it may rise, as a fraction
 * @param frequency nominal frequency
 * @param prospectiveFaultCurrent highest fault current at the terminals
 */
public record Mains(
        SupplySystem system,
        @Bounds(above = 0, max = 1000) Voltage voltage,
        @Bounds(min = 0, max = 0.5) double lowTolerance,
        @Bounds(min = 0, max = 0.5) double highTolerance,
        @Bounds(min = 40, max = 70) Frequency frequency,
        @Bounds(above = 0, max = 200000) Current prospectiveFaultCurrent) {

    /** Lowest voltage in normal operation. */
    public Voltage low() {
        return new Voltage(voltage.si() * (1 - lowTolerance));
    }

    /** Highest voltage in normal operation. */
    public Voltage high() {
        return new Voltage(voltage.si() * (1 + highTolerance));
    }
}
