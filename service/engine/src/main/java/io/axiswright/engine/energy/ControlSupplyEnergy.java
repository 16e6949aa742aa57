package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Energy;

/**
 * The energy of a control supply in a year.
 *
 * @param id its name
 * @param drawn what it takes
 * @param delivered what of that reaches its output
 * @param lost what of that it turns into heat itself
 */
public record ControlSupplyEnergy(String id, YearlyUse drawn, Energy delivered, Energy lost) {}
