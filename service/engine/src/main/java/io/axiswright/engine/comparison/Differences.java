package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Finds every difference between two record graphs of one type, matching list elements by their ids. */
final class Differences {

    /** Two numbers this close are the same number summed in another order. */
    private static final double ROUNDING = 1e-12;

    private final Set<String> skipped;
    private final List<Step> path = new ArrayList<>();
    private final List<Difference> found = new ArrayList<>();

    private Differences(Set<String> skipped) {
        this.skipped = skipped;
    }

    /** All differences, in the order of the records' components; components of the given names are not looked into. */
    static List<Difference> between(Object before, Object after, Set<String> skipped) {
        var differences = new Differences(skipped);
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
            if (components.onTheWire(k) && !skipped.contains(components.name(k))) {
                compare(new Step.Member(components.name(k)), components.get(before, k), components.get(after, k));
            }
        }
    }

    private void compareLists(List<?> before, List<?> after) {
        Map<String, Object> first = Records.keyed(before);
        Map<String, Object> second = Records.keyed(after);
        int place = 0;
        for (var entry : first.entrySet()) {
            compare(new Step.Element(entry.getKey(), place++), entry.getValue(), second.get(entry.getKey()));
        }
        place = 0;
        for (var entry : second.entrySet()) {
            if (!first.containsKey(entry.getKey())) {
                compare(new Step.Element(entry.getKey(), place), null, entry.getValue());
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
