package io.axiswright.engine.braking;

/** What governs the energy of a bus at an instant. */
enum BusMode {
    /** It stays where it is: at the rectifier's voltage, or at that of a chopper that burns just what comes. */
    HELD,
    /** It follows the power of the axes. */
    FREE,
    /** The resistor empties it besides. */
    CHOPPING
}
