package io.axiswright.engine.finding;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A remark on a result.
 *
 * @param code which remark of the catalogue it is
 * @param severity how much it matters
 * @param text the remark in words, with its values filled in
 * @param pointer JSON Pointer to what it is about, in the request's design or in the result
 * @param clause the rule behind it: standard and clause, or "common practice, no source"
 * @param value the offending value, where there is one
 * @param limit the limit it is held against, where there is one
 * @param remedy what would fix it
 */
public record Finding(
        FindingCode code,
        Severity severity,
        String text,
        String pointer,
        String clause,
        @Nullable Quantity value,
        @Nullable Quantity limit,
        String remedy) {}
