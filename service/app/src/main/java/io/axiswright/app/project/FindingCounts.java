package io.axiswright.app.project;

/**
 * How many findings a result has.
 *
 * @param violations what keeps the machine from being built as answered
 * @param cautions what somebody must look at
 * @param notes what is worth knowing
 */
record FindingCounts(int violations, int cautions, int notes) {}
