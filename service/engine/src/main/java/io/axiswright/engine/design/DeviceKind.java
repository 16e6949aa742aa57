package io.axiswright.engine.design;

/** The kind of protective device a panel builder prefers. */
public enum DeviceKind {
    /** Circuit-breaker. */
    BREAKER,
    /** Fuse. */
    FUSE
}
