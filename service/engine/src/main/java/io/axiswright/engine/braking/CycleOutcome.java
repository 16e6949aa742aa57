package io.axiswright.engine.braking;

import org.jspecify.annotations.Nullable;

/**
 * The cycle case.
 *
 * @param basis how it was worked out
 * @param outcome its numbers
 * @param settling how it was come to; absent for a bound
 */
record CycleOutcome(
        CycleBasis basis, CaseOutcome outcome, @Nullable Settling settling) {

    /**
     * How the cycle that repeats was come to from a cold bus.
     *
     * @param cycles how many were followed, the one that repeats included
     * @param residual how much the energy at its end differs from that at its start, J
     */
    record Settling(int cycles, double residual) {}
}
