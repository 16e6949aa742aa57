package io.axiswright.engine.braking;

/** How the cycle case of a bus was worked out. */
public enum CycleBasis {
    /** All axes have the same period; the bus repeats with it. */
    PERIODIC,
    /** The periods are in a ratio of small whole numbers; the bus repeats with their least common multiple. */
    COMMON_MULTIPLE,
    /** The periods are unrelated: a guaranteed bound over every alignment of the axes, not a course over time. */
    BOUND,
    /** The switching of the chopper never falls into step with the cycle; the worst of many cycles is given. */
    UNSETTLED
}
