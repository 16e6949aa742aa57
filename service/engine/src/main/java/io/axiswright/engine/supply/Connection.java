package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;

/** How a circuit is connected to the supply. */
public enum Connection {
    /** All three lines. */
    THREE_PHASE(3),
    /** One phase between two lines. */
    LINE_TO_LINE(2),
    /** One phase between a line and neutral. */
    LINE_TO_NEUTRAL(1);

    private final int lines;

    Connection(int lines) {
        this.lines = lines;
    }

    /** How many lines it uses. */
    int lines() {
        return lines;
    }

    /**
     * Poles of its protective device: every line, and neutral with it under IEC practice (IEC 60364-4-43 431.2 lets it
     * stay closed in TN-S; opening both is right in every system).
     */
    int poles(CodeBasis basis) {
        return this == LINE_TO_NEUTRAL && basis == CodeBasis.IEC_60204_1 ? 2 : lines;
    }

    /** Its conductors: lines, neutral where it uses it, protective conductor. */
    int conductors() {
        return this == LINE_TO_NEUTRAL ? 3 : lines + 1;
    }
}
