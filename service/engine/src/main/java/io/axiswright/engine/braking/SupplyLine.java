package io.axiswright.engine.braking;

/** Where in its tolerance the mains stands. */
public enum SupplyLine {
    /** At its upper end. */
    HIGH,
    /** At its nominal voltage. */
    NOMINAL,
    /** At its lower end. */
    LOW
}
