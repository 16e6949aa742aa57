package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Voltage;
import java.util.List;

/**
 * The voltage at one terminal, from the lowest output voltage of its control supply.
 *
 * @param subject id of the gateway or the axis
 * @param terminal what it is
 * @param steady with released brakes held and outputs on
 * @param brakePullIn lowest while brakes pull in; the steady one if the chain has none
 * @param required what it needs where it is tightest: the item's own least voltage, or the lower end of the band of
 *     IEC 61131-2 if that is higher
 * @param modes the voltage in each mode, as far as the mode exists and the voltage does not collapse
 * @param margin least difference between the voltage it gets and the one it needs; negative if it falls short
 */
public record ControlVoltage(
        String subject,
        TerminalKind terminal,
        Voltage steady,
        Voltage brakePullIn,
        Voltage required,
        List<ModeVoltage> modes,
        Voltage margin) {

    /** Keeps the list from being changed. */
    public ControlVoltage {
        modes = List.copyOf(modes);
    }
}
