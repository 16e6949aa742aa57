package io.axiswright.engine.comparison;

/**
 * A part of the design that stands under another id, and is otherwise as good as the same: of all parts that came it is the one most
 * like the one that went, and the other way round, and at most a tenth of what they state differs. Where two are equally alike, or
 * more differs, one part went and another came. Backwards it is the inverse.
 *
 * @param what which kind of part
 * @param before its id in the first design
 * @param after its id in the second design
 */
public record Rename(NamedPart what, String before, String after) {}
