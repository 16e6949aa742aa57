package io.axiswright.engine.braking;

/** What the bus is put through. */
public enum CaseKind {
    /** The cycle, repeated until the bus repeats too. */
    CYCLE,
    /** The controlled stop of one stop zone; the other axes of the bus go on with their cycles meanwhile. */
    STOP_ZONE,
    /** The controlled stop of every stop zone with axes on the bus, at once. */
    STOP_ALL,
    /** The cycle of the axes left while one stop zone stands still: those that stand take nothing that others return. */
    ZONE_AT_REST,
    /** Every axis that returns power at constant speed runs down at once, as long as the longest such run of its cycle. */
    LOWERING
}
