package io.axiswright.engine.standard;

/** How well a table row is known; the text of the codes is not open, so rows were read on public pages or remembered. */
public enum Confidence {
    /** Read on two independent pages that agree. */
    CONFIRMED_BY_TWO,
    /** Read on one page. */
    CONFIRMED_BY_ONE,
    /** Remembered, or computed by a remembered rule; to be held against the printed standard before it is relied on. */
    FROM_MEMORY
}
