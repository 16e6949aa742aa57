package io.axiswright.engine.mounting;

/** What asks the greatest torque of a shaft fastening. */
public enum FasteningLoad {
    /** The working cycle, at its peak. */
    CYCLE,
    /** A controlled stop on demand. */
    STOP,
    /** The holding brake, where it closes while the shaft turns and the load goes on. */
    HOLDING_BRAKE
}
