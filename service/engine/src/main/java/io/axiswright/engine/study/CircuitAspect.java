package io.axiswright.engine.study;

/** What of a circuit may differ between two markets. */
public enum CircuitAspect {
    /** The loads fed together: no circuit of the other market feeds just these. */
    LOADS,
    /** Connection, lines or voltage. */
    CONNECTION,
    /** Current of its loads. */
    CURRENT,
    /** Current its conductors and device must carry by the code. */
    DESIGN_CURRENT,
    /** The protective device or its rating. */
    DEVICE,
    /** The size of its conductors, or how many are in parallel. */
    CONDUCTOR,
    /** The protective conductor. */
    PROTECTIVE_CONDUCTOR,
    /** Voltage drop. */
    VOLTAGE_DROP,
    /** The limit that decides the size, or its clause. */
    DECIDING_LIMIT
}
