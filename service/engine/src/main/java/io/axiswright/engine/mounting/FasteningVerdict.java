package io.axiswright.engine.mounting;

/** Whether a shaft fastening holds. */
public enum FasteningVerdict {
    /** It carries the required torque. */
    HOLDS,
    /** It carries less than the required torque. */
    TOO_WEAK,
    /** It is strong enough, but reversing torque works it loose. */
    UNFIT_FOR_REVERSAL,
    /** There is no key for the shaft, so nothing can be said. */
    UNKNOWN
}
