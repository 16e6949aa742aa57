package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Bounds;
import java.util.Map;
import java.util.function.BiPredicate;

/**
 * How many of one kind are not as they were.
 *
 * @param appeared those only in the second
 * @param vanished those only in the first
 * @param changed those in both that differ
 */
public record ChangeCounts(
        @Bounds(min = 0) int appeared,
        @Bounds(min = 0) int vanished,
        @Bounds(min = 0) int changed) {

    /** Of things by what they are called. */
    static <T> ChangeCounts of(Map<String, T> before, Map<String, T> after, BiPredicate<T, T> same) {
        int changed = 0;
        int vanished = 0;
        for (var entry : before.entrySet()) {
            T other = after.get(entry.getKey());
            if (other == null) {
                vanished++;
            } else if (!same.test(entry.getValue(), other)) {
                changed++;
            }
        }
        int appeared = after.size() - (before.size() - vanished);
        return new ChangeCounts(appeared, vanished, changed);
    }

    /** Of differences by their kind. */
    static ChangeCounts of(Iterable<Difference> differences) {
        int[] counts = new int[ChangeKind.values().length];
        differences.forEach(difference -> counts[difference.kind().ordinal()]++);
        return new ChangeCounts(
                counts[ChangeKind.ADDED.ordinal()],
                counts[ChangeKind.REMOVED.ordinal()],
                counts[ChangeKind.CHANGED.ordinal()]);
    }
}
