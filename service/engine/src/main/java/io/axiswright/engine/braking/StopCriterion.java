package io.axiswright.engine.braking;

/** At which instant of the cycle the stop is begun. */
public enum StopCriterion {
    /** At the instant from which the bus rises highest. */
    HIGHEST_VOLTAGE,
    /** At the instant from which the axes return, net, the most energy in one piece: the most for the resistor. */
    MOST_ENERGY
}
