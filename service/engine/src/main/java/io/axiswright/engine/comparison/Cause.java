package io.axiswright.engine.comparison;

/**
 * An input change with what it does to a consequence.
 *
 * @param change id of the input change
 * @param role what it does
 */
public record Cause(String change, Role role) {}
