package io.axiswright.engine.catalogue;

/** What keeps the energy of a buffer. */
public enum BufferKind {
    /** Capacitors. */
    CAPACITOR,
    /** Batteries. */
    BATTERY
}
