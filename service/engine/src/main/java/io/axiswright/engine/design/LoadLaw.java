package io.axiswright.engine.design;

/** How the current of a 24 V load goes with its voltage. */
public enum LoadLaw {
    /** I = P/V: electronics behind a converter. */
    CONSTANT_POWER,
    /** I does not change: sensors with a linear regulator, signal outputs. */
    CONSTANT_CURRENT,
    /** I = V/R: coils, lamps, valves. */
    RESISTIVE
}
