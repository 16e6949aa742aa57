package io.axiswright.engine.energy;

import io.axiswright.engine.quantity.Power;

/**
 * What the conductors of a circuit lose.
 *
 * @param circuit id of the circuit; "feeder" for the feeder
 * @param loss mean heat of all its loaded conductors at its cycle-thermal currents
 */
public record ConductorLoss(String circuit, Power loss) {}
