package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.LineResistance;

/**
 * Impedance of one conductor per length.
 *
 * @param resistance resistance
 * @param reactance reactance
 */
public record LineImpedance(LineResistance resistance, LineResistance reactance) {}
