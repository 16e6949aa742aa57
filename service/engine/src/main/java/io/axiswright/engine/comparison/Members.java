package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What a part of a design states besides its id, each value under the way to it: so two parts are held against each other, and
 * how much of them is the same can be told. What stands in a record of another class stands under another way, so of two
 * mechanisms of different kinds nothing is the same.
 */
final class Members {

    private static final String ID = "id";

    private final Map<String, Object> values = new LinkedHashMap<>();

    /** Those of a part. */
    Members(Object part) {
        addRecord("", part, ID);
    }

    private void add(String way, @Nullable Object value) {
        if (value instanceof List<?> list) {
            Records.keyed(list).forEach((key, element) -> add(way + "/" + key, element));
        } else if (value != null && Records.isTree(value)) {
            addRecord(way, value, "");
        } else if (value != null) {
            values.put(way, value);
        }
    }

    private void addRecord(String way, Object owner, String leftOut) {
        Components components = Components.of(owner);
        String within = way + ":" + owner.getClass().getSimpleName() + "/";
        for (int k = 0; k < components.count(); k++) {
            if (!components.name(k).equals(leftOut)) {
                add(within + components.name(k), components.get(owner, k));
            }
        }
    }

    /** The value under a way; null if there is none. */
    @Nullable
    Object get(String way) {
        return values.get(way);
    }

    /** All ways. */
    Set<String> ways() {
        return values.keySet();
    }

    /** The share of all members that is not the same in both parts. */
    double unlike(Members other) {
        return unlike(other, _ -> true);
    }

    /**
     * Of the members that either part has and that count, the share that is not the same in both: 0 of parts that are equal, 1 of
     * parts that have nothing in common, be it because they state nothing. It is the same from either side.
     */
    double unlike(Members other, Predicate<String> counts) {
        int all = 0;
        int same = 0;
        for (var entry : values.entrySet()) {
            if (counts.test(entry.getKey())) {
                all++;
                same += Differences.same(entry.getValue(), other.get(entry.getKey())) ? 1 : 0;
            }
        }
        for (String way : other.values.keySet()) {
            if (!values.containsKey(way) && counts.test(way)) {
                all++;
            }
        }
        return all == 0 ? 1 : (double) (all - same) / all;
    }
}
