package io.axiswright.engine.braking;

/** The limits a braking unit is held to, in the order they are checked. */
public enum BrakingLimit {
    /** The chopper must switch on below the trip voltage. */
    SWITCH_ON_ABOVE_TRIP,
    /** The chopper must switch off above the rectified voltage at high line, or it would burn mains energy for ever. */
    SWITCH_OFF_BELOW_LINE,
    /** Current through the lowest resistance of the tolerance band against the chopper's highest. */
    CHOPPER_CURRENT,
    /** Highest bus voltage with the unit at work against the trip voltage. */
    BUS_VOLTAGE,
    /**
     * Energy of the largest pulse in any case against the resistor's pulse energy: all that goes into it in one run of return,
     * stop or descent, with no credit for what it gives off meanwhile; runs that follow each other after less time than the
     * earlier has lasted are one.
     */
    PULSE_ENERGY,
    /** Mean power over the cycle against the resistor's continuous power. */
    CONTINUOUS_POWER,
    /** Resistor temperature, a stop on top of the hottest instant of the cycle included. */
    RESISTOR_TEMPERATURE
}
