package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Replaces texts anywhere in record graphs. Whatever holds none that is replaced stays the very same object, and what a graph has in
 * common with the one before becomes the same object again.
 */
final class TextReplacement {

    /** What stands in place of a text. */
    @FunctionalInterface
    interface Replacement {
        /** The text for one that the component of that name of the record holds, by itself or in a list. */
        String of(Object owner, String component, String text);
    }

    private final Replacement replacement;
    private final Set<String> skipped;

    /** What became of the records of the last graph. */
    private Map<Object, Object> last = Map.of();

    private Map<Object, Object> now = Map.of();

    /**
     * A replacement of texts.
     *
     * @param skipped names of components that are not looked into
     */
    TextReplacement(Replacement replacement, Set<String> skipped) {
        this.replacement = replacement;
        this.skipped = skipped;
    }

    /** The record with its texts replaced. */
    Object in(Object root) {
        now = new IdentityHashMap<>();
        Object result = record(root);
        last = now;
        return result;
    }

    private Object record(Object owner) {
        Object done = now.getOrDefault(owner, last.get(owner));
        Object result = done == null ? replaced(owner) : done;
        now.put(owner, result);
        return result;
    }

    private Object replaced(Object owner) {
        Components components = Components.of(owner);
        Object result = owner;
        for (int k = 0; k < components.count(); k++) {
            if (!skipped.contains(components.name(k))) {
                Object old = components.get(owner, k);
                Object next = in(owner, components.name(k), old);
                if (old != next) {
                    result = components.with(result, k, next);
                }
            }
        }
        return result;
    }

    private @Nullable Object in(Object owner, String component, @Nullable Object value) {
        return switch (value) {
            case String text -> in(owner, component, text);
            case List<?> list -> in(owner, component, list);
            case Record inner when Records.isTree(inner) -> record(inner);
            case null, default -> value;
        };
    }

    private String in(Object owner, String component, String text) {
        String next = replacement.of(owner, component, text);
        return next.equals(text) ? text : next;
    }

    private Object in(Object owner, String component, List<?> list) {
        List<@Nullable Object> next = new ArrayList<>(list.size());
        boolean changed = false;
        for (Object element : list) {
            Object replaced = in(owner, component, element);
            changed |= replaced != element;
            next.add(replaced);
        }
        return changed ? next : list;
    }
}
