package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Something the caller changed.
 *
 * @param id "change-1", "change-2" … in the order of the document
 * @param path where in codeBasis, catalogue and design; written like a JSON Pointer but none, for list elements are named by
 *     their id, because their positions move between revisions
 * @param kind whether it was added, removed or changed
 * @param before how it was; absent if added
 * @param after how it is; absent if removed
 * @param difference after minus before, for quantities of one dimension, also for the cross-sections of conductor sizes; of
 *     temperatures in K
 * @param moneyDifference after minus before, for amounts of money in one currency
 * @param numberDifference after minus before, for counts and other plain numbers
 */
public record InputChange(
        String id,
        String path,
        ChangeKind kind,
        @Nullable Object before,
        @Nullable Object after,
        @Nullable Quantity difference,
        @Nullable MoneyDifference moneyDifference,
        @Nullable Double numberDifference) {

    /** A difference of two requests under its id. */
    static InputChange of(String id, Difference change) {
        return new InputChange(
                id,
                change.place(),
                change.kind(),
                change.before(),
                change.after(),
                Deltas.ofQuantities(change.before(), change.after()),
                Deltas.ofMoney(change.before(), change.after()),
                Deltas.ofNumbers(change.before(), change.after()));
    }
}
