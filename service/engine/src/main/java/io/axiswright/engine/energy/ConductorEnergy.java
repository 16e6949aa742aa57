package io.axiswright.engine.energy;

/**
 * What the conductors of a circuit lose in a year.
 *
 * @param circuit id of the circuit; "feeder" for the feeder
 * @param lost heat of all its loaded conductors
 */
public record ConductorEnergy(String circuit, YearlyUse lost) {}
