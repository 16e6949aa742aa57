package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Voltage;

/**
 * The voltage at a terminal in one mode, from the lowest output voltage of its control supply.
 *
 * @param mode the mode
 * @param voltage lowest voltage in that mode
 */
public record ModeVoltage(ControlMode mode, Voltage voltage) {}
