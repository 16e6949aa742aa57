package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Voltage;

/**
 * The voltage at one terminal, from the lowest output voltage of its control supply.
 *
 * @param subject id of the gateway or the axis
 * @param terminal what it is
 * @param steady with released brakes held
 * @param brakePullIn lowest while brakes pull in; the steady one if the chain has none
 * @param required what it needs where it is tightest: the item's own least voltage, or the lower end of the band of
 *     IEC 61131-2 if that is higher
 * @param margin least difference between the voltage it gets and the one it needs; negative if it falls short
 */
public record ControlVoltage(
        String subject, TerminalKind terminal, Voltage steady, Voltage brakePullIn, Voltage required, Voltage margin) {}
