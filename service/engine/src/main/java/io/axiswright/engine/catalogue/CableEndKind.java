package io.axiswright.engine.catalogue;

/** How an end of a cable comes. */
public enum CableEndKind {
    /** With its connector moulded on. */
    MOULDED,
    /** Bare: it goes wherever the cable goes, and onto terminals. */
    LOOSE,
    /** Bare, to get its connector on the machine. */
    FIELD_MADE
}
