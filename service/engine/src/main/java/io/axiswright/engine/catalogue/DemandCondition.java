package io.axiswright.engine.catalogue;

/** What a conditional need depends on. */
public enum DemandCondition {
    /** The axis is foot mounted. */
    FOOT_MOUNTED,
    /** The drive unit runs with forced ventilation. */
    FORCED_VENTILATION,
    /** The axis has a holding brake. */
    HOLDING_BRAKE,
    /** The axis keeps its position when mains is off. */
    KEEP_ALIVE,
    /** The axis has no holding brake. */
    NO_HOLDING_BRAKE
}
