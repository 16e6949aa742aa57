package io.axiswright.engine.comparison;

import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.graph.Components;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The parts of one kind whose id stands in one of two designs only.
 *
 * @param gone those of the first design by id, in its order
 * @param come those of the second design by id, in its order
 */
record Unmatched(Map<String, Members> gone, Map<String, Members> come) {

    static Unmatched of(NamedPart what, Design before, Design after) {
        Map<String, Object> first = byId(what.type(), before);
        Map<String, Object> second = byId(what.type(), after);
        return new Unmatched(only(first, second.keySet(), after), only(second, first.keySet(), before));
    }

    /** The others, without those of the given ids. */
    Unmatched without(Set<String> ids) {
        Map<String, Members> restGone = new LinkedHashMap<>(gone);
        Map<String, Members> restCome = new LinkedHashMap<>(come);
        restGone.keySet().removeAll(ids);
        restCome.keySet().removeAll(ids);
        return new Unmatched(restGone, restCome);
    }

    /** An id that an axis to come has in the other design is taken there. */
    private static Map<String, Members> only(Map<String, Object> parts, Set<String> others, Design other) {
        Set<String> reserved = byId(ReservedAxis.class, other).keySet();
        Map<String, Members> only = new LinkedHashMap<>();
        parts.forEach((id, part) -> {
            if (!others.contains(id) && !reserved.contains(id)) {
                only.put(id, new Members(part));
            }
        });
        return only;
    }

    private static Map<String, Object> byId(Class<?> type, Object design) {
        Map<String, Object> parts = new LinkedHashMap<>();
        collect(type, design, parts);
        return parts;
    }

    private static void collect(Class<?> type, @Nullable Object value, Map<String, Object> parts) {
        if (type.isInstance(value)) {
            parts.put(Objects.requireNonNull(Records.key(value)), value);
        } else if (value instanceof List<?> list) {
            list.forEach(element -> collect(type, element, parts));
        } else if (value != null && Records.isTree(value)) {
            Components components = Components.of(value);
            for (int k = 0; k < components.count(); k++) {
                collect(type, components.get(value, k), parts);
            }
        }
    }
}
