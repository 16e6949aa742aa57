package io.axiswright.engine.braking;

/** What the bus is put through. */
public enum CaseKind {
    /** The cycle, repeated until the bus repeats too. */
    CYCLE,
    /** The controlled stop of one stop zone. */
    STOP_ZONE,
    /** The controlled stop of every stop zone with axes on the bus, at once. */
    STOP_ALL
}
