package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something in the result that is not as it was.
 *
 * @param discipline the part of the result it belongs to
 * @param path where in the result; written like a JSON Pointer but none, for list elements are named by their id, because
 *     their positions move between revisions
 * @param kind whether it came, went or changed
 * @param before how it was; absent if it came
 * @param after how it is; absent if it went
 * @param difference after minus before, for quantities of one dimension, also for the cross-sections of conductor sizes; of
 *     temperatures in K
 * @param moneyDifference after minus before, for amounts of money in one currency
 * @param numberDifference after minus before, for counts and other plain numbers
 * @param causes the input changes that matter for it, found by studies with single changes taken back and put in
 * @param onlyTogether whether no single change brings it, each having been tried
 * @param together ids of changes, or of groups of them, that bring it together; empty where one does alone, or none were found
 * @param minimal whether each of those is needed: the second design without it has another result here or, where it has no meaning
 *     without it, the others alone did not bring this. Other changes may do it too
 * @param text the same in a sentence
 */
public record Consequence(
        String discipline,
        String path,
        ChangeKind kind,
        @Nullable Object before,
        @Nullable Object after,
        @Nullable Quantity difference,
        @Nullable MoneyDifference moneyDifference,
        @Nullable Double numberDifference,
        List<Cause> causes,
        boolean onlyTogether,
        List<String> together,
        boolean minimal,
        String text) {}
