package io.axiswright.engine.braking;

/**
 * The cycle case.
 *
 * @param basis how it was worked out
 * @param outcome its numbers
 */
record CycleOutcome(CycleBasis basis, CaseOutcome outcome) {}
