package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.study.StudyResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Finds every difference between two record graphs of one type, matching list elements by their ids. Elements without ids are
 * matched by place as long as there are as many; a list of them that grew or shrank is one difference, for what is behind the
 * place where something came or went has other places now.
 */
final class Differences {

    /** Two numbers this close are the same number summed in another order. */
    private static final double ROUNDING = 1e-12;

    /** Running numbers and places in the body, which move with whatever stands before. */
    private static final Set<String> BOOKKEEPING = Set.of("number", "pointer");

    private final Set<String> skipped;

    /** Nothing is ever put into a result, so its elements need no names of their own. */
    private final boolean ofResults;

    private final List<Step> path = new ArrayList<>();
    private final List<Difference> found = new ArrayList<>();

    private Differences(Set<String> skipped, boolean ofResults) {
        this.skipped = skipped;
        this.ofResults = ofResults;
    }

    /** All differences, in the order of the records' components; components of the given names are not looked into. */
    static List<Difference> between(Object before, Object after, Set<String> skipped) {
        var differences = new Differences(skipped, before instanceof StudyResult);
        differences.compare(before, after);
        return differences.found;
    }

    private void compare(@Nullable Object before, @Nullable Object after) {
        if (before == after) {
            return;
        }
        if (before == null || after == null) {
            note(before == null ? ChangeKind.ADDED : ChangeKind.REMOVED, before, after);
        } else if (Records.isTree(before) && before.getClass() == after.getClass()) {
            compareRecords(before, after);
        } else if (before instanceof List<?> first && after instanceof List<?> second) {
            compareLists(first, second);
        } else if (!same(before, after)) {
            note(ChangeKind.CHANGED, before, after);
        }
    }

    private void compare(Step step, @Nullable Object before, @Nullable Object after) {
        path.add(step);
        compare(before, after);
        path.removeLast();
    }

    private void note(ChangeKind kind, @Nullable Object before, @Nullable Object after) {
        found.add(new Difference(List.copyOf(path), kind, before, after));
    }

    private void compareRecords(Object before, Object after) {
        Components components = Components.of(before);
        for (int k = 0; k < components.count(); k++) {
            String name = components.name(k);
            if (components.onTheWire(k) && !skipped.contains(name) && !BOOKKEEPING.contains(name)) {
                compare(new Step.Member(name), components.get(before, k), components.get(after, k));
            }
        }
    }

    private void compareLists(List<?> before, List<?> after) {
        if (sameObjects(before, after)) {
            return;
        }
        Map<String, Object> first = ofResults ? Records.counted(before) : Records.named(before);
        Map<String, Object> second = ofResults ? Records.counted(after) : Records.named(after);
        if (first != null && second != null) {
            compareElements(first, second);
        } else if (before.size() == after.size()) {
            for (int place = 0; place < before.size(); place++) {
                compare(
                        new Step.Element(String.valueOf(place), place, after.get(place)),
                        before.get(place),
                        after.get(place));
            }
        } else {
            note(ChangeKind.CHANGED, before, after);
        }
    }

    private static boolean sameObjects(List<?> before, List<?> after) {
        if (before.size() != after.size()) {
            return false;
        }
        for (int place = 0; place < before.size(); place++) {
            if (before.get(place) != after.get(place)) {
                return false;
            }
        }
        return true;
    }

    private void compareElements(Map<String, Object> first, Map<String, Object> second) {
        int place = 0;
        for (var entry : first.entrySet()) {
            Object other = second.get(entry.getKey());
            Object shown = other == null ? entry.getValue() : other;
            compare(new Step.Element(entry.getKey(), place++, shown), entry.getValue(), other);
        }
        place = 0;
        for (var entry : second.entrySet()) {
            if (!first.containsKey(entry.getKey())) {
                compare(new Step.Element(entry.getKey(), place, entry.getValue()), null, entry.getValue());
            }
            place++;
        }
    }

    static boolean same(@Nullable Object before, @Nullable Object after) {
        if (before instanceof Quantity a && after instanceof Quantity b) {
            return a.dimension() == b.dimension() && close(a.si(), b.si());
        }
        if (before instanceof Double a && after instanceof Double b) {
            return close(a, b);
        }
        return Objects.equals(before, after);
    }

    private static boolean close(double a, double b) {
        return a == b || Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));
    }
}
