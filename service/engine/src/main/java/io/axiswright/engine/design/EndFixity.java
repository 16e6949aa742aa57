package io.axiswright.engine.design;

/** How the two ends of a screw are held: fixed ends cannot tilt, supported ones can. */
public enum EndFixity {
    /** One end fixed, the other free. */
    FIXED_FREE,
    /** Both ends supported. */
    SUPPORTED_SUPPORTED,
    /** One end fixed, the other supported. */
    FIXED_SUPPORTED,
    /** Both ends fixed. */
    FIXED_FIXED
}
