package io.axiswright.engine.energy;

/**
 * A part of the energy of the whole machine.
 *
 * @param purpose what becomes of it
 * @param use how much it is
 * @param share part of the whole; negative where shafts give back more than they take
 */
public record EnergyShare(EnergyPurpose purpose, YearlyUse use, double share) {}
