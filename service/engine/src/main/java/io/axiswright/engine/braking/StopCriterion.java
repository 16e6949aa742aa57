package io.axiswright.engine.braking;

/** From which instant of its own cycle each axis is taken to stop. */
public enum StopCriterion {
    /** From the instant whose stop returns the most energy; where only this case is listed, also the most power. */
    MOST_ENERGY,
    /** From the instant whose stop returns the highest power. */
    MOST_POWER
}
