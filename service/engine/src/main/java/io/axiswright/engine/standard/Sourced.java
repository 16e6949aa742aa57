package io.axiswright.engine.standard;

/**
 * A value out of a table, with its source.
 *
 * @param value the value
 * @param source where it comes from
 */
public record Sourced<T>(T value, Source source) {

    /** Standard, edition and clause or table. */
    public String clause() {
        return source.clause();
    }
}
