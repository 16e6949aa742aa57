package io.axiswright.engine.comparison;

/**
 * An input change, or a group of them, with what it does to a consequence.
 *
 * @param change id of the input change, or of the group of changes
 * @param role what it does
 */
public record Cause(String change, Role role) {}
