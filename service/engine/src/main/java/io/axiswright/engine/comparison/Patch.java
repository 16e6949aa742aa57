package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Puts a single difference into a record graph, or takes it back out. */
final class Patch {

    private Patch() {}

    /** The graph with the value at the difference's path as it is after. */
    static <T> T putIn(T root, Difference difference) {
        return cast(root, put(root, difference.path(), 0, difference.after()));
    }

    /** The graph with the value at the difference's path as it was before. */
    static <T> T takeBack(T root, Difference difference) {
        return cast(root, put(root, difference.path(), 0, difference.before()));
    }

    /** The value a path leads to; null where it leads nowhere. */
    static @Nullable Object at(@Nullable Object root, List<Step> path) {
        Object value = root;
        for (Step step : path) {
            if (value == null) {
                return null;
            }
            value = child(value, step);
        }
        return value;
    }

    private static @Nullable Object child(Object owner, Step step) {
        return switch (step) {
            case Step.Element(String key, int place, Object value)
            when owner instanceof List<?> list -> Records.keyed(list).get(key);
            case Step.Member(String name) when Records.isTree(owner) -> member(owner, name);
            default -> null;
        };
    }

    private static @Nullable Object member(Object owner, String name) {
        Components components = Components.of(owner);
        int place = components.place(name);
        return place < 0 ? null : components.get(owner, place);
    }

    private static @Nullable Object put(@Nullable Object owner, List<Step> path, int depth, @Nullable Object value) {
        if (depth == path.size()) {
            return value;
        }
        return switch (path.get(depth)) {
            case Step.Member(String name)
            when owner != null -> {
                Object old = child(owner, path.get(depth));
                yield Records.with(owner, name, put(old, path, depth + 1, value));
            }
            case Step.Element element
            when owner instanceof List<?> list -> putElement(list, element, path, depth, value);
            // the way is gone: something above was added or removed
            default -> owner;
        };
    }

    private static List<Object> putElement(
            List<?> list, Step.Element element, List<Step> path, int depth, @Nullable Object value) {
        Map<String, Object> keyed = Records.keyed(list);
        Object replacement = put(keyed.get(element.key()), path, depth + 1, value);
        List<Object> result = new ArrayList<>();
        keyed.forEach((key, old) -> {
            if (!key.equals(element.key())) {
                result.add(old);
            } else if (replacement != null) {
                result.add(replacement);
            }
        });
        if (!keyed.containsKey(element.key()) && replacement != null) {
            result.add(Math.min(element.place(), result.size()), replacement);
        }
        return List.copyOf(result);
    }

    @SuppressWarnings("unchecked")
    private static <T> T cast(T model, @Nullable Object value) {
        return (T) model.getClass().cast(Objects.requireNonNull(value));
    }
}
