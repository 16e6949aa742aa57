/** What every result carries beside its numbers: findings, derivations, and the faults of an input without meaning. */
@org.jspecify.annotations.NullMarked
package io.axiswright.engine.finding;
