package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Quantity;
import java.lang.reflect.RecordComponent;
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
    private final List<Difference> found = new ArrayList<>();

    private Differences(Set<String> skipped) {
        this.skipped = skipped;
    }

    /** All differences, in the order of the records' components; components of the given names are not looked into. */
    static List<Difference> between(Object before, Object after, Set<String> skipped) {
        var differences = new Differences(skipped);
        differences.compare(List.of(), before, after);
        return differences.found;
    }

    private void compare(List<Step> path, @Nullable Object before, @Nullable Object after) {
        if (same(before, after)) {
            return;
        }
        if (before == null || after == null) {
            found.add(new Difference(path, before == null ? ChangeKind.ADDED : ChangeKind.REMOVED, before, after));
        } else if (Records.isTree(before) && before.getClass() == after.getClass()) {
            for (RecordComponent component : Records.components(before)) {
                if (!skipped.contains(component.getName())) {
                    compare(
                            extend(path, new Step.Member(component.getName())),
                            Records.get(before, component),
                            Records.get(after, component));
                }
            }
        } else if (before instanceof List<?> first && after instanceof List<?> second) {
            compareLists(path, first, second);
        } else {
            found.add(new Difference(path, ChangeKind.CHANGED, before, after));
        }
    }

    private void compareLists(List<Step> path, List<?> before, List<?> after) {
        Map<String, Object> first = Records.keyed(before);
        Map<String, Object> second = Records.keyed(after);
        int place = 0;
        for (var entry : first.entrySet()) {
            compare(
                    extend(path, new Step.Element(entry.getKey(), place++)),
                    entry.getValue(),
                    second.get(entry.getKey()));
        }
        place = 0;
        for (var entry : second.entrySet()) {
            if (!first.containsKey(entry.getKey())) {
                compare(extend(path, new Step.Element(entry.getKey(), place)), null, entry.getValue());
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

    private static List<Step> extend(List<Step> path, Step step) {
        List<Step> longer = new ArrayList<>(path);
        longer.add(step);
        return List.copyOf(longer);
    }
}
