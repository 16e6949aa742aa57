package io.axiswright.engine.fault;

/** Where on the AC distribution a fault is. */
public enum FaultPlace {
    /** The supply terminals of the machine. */
    SUPPLY_TERMINALS,
    /** The mains panel, after the feeder. */
    MAINS_PANEL,
    /** The secondary terminals of a transformer that stands at the mains panel. */
    TRANSFORMER_SECONDARY,
    /** The panel behind a transformer. */
    SECONDARY_PANEL,
    /** The end of a branch circuit, at a load. */
    LOAD
}
