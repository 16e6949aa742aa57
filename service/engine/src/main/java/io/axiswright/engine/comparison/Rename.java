package io.axiswright.engine.comparison;

/**
 * A part of the design that stands under another id, and is otherwise as good as the same.
 *
 * @param what which kind of part
 * @param before its id in the first design
 * @param after its id in the second design
 */
public record Rename(NamedPart what, String before, String after) {}
