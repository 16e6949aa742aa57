package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * The margin that lines of the bill are sold at. Where several rules fit a line, one that names both kind and lines goes before one
 * that names the kind, that before one that names the lines, and that before one that names neither.
 *
 * @param kind the kind of the items; all kinds if absent
 * @param lines the lines; all that are charged if absent
 * @param margin share of the sale price that is not the catalogue's price: (sale − catalogue) / sale
 */
public record MarginRule(
        @Nullable ItemKind kind,
        @Nullable LineClass lines,
        @Bounds(min = 0, max = 0.99) double margin) {

    /** Whether it is for items of that kind on those lines. */
    public boolean fits(ItemKind itemKind, LineClass lineClass) {
        return (kind == null || kind == itemKind) && (lines == null || lines == lineClass);
    }

    /** How closely it says what it is for; of two that fit one line no two are alike. */
    public int closeness() {
        return (kind == null ? 0 : 2) + (lines == null ? 0 : 1);
    }
}
