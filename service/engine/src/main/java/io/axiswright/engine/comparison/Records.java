package io.axiswright.engine.comparison;

import io.axiswright.engine.graph.Components;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Takes record graphs apart, so that comparing needs no code per type. */
final class Records {

    private Records() {}

    /** Whether a record is compared component by component; quantities and the like are single values. */
    static boolean isTree(@Nullable Object value) {
        return value instanceof Record
                && !(value instanceof Quantity)
                && !(value instanceof Money)
                && !(value instanceof ConductorSize);
    }

    /** A copy of the record in which the component of a name has another value. */
    static Object with(Object owner, String name, @Nullable Object value) {
        Components components = Components.of(owner);
        return components.with(owner, components.place(name), value);
    }

    /** The elements of a list under their keys; by place where ids are missing or not unique. */
    static Map<String, Object> keyed(List<?> list) {
        Map<String, Object> named = named(list);
        return named == null ? byPlace(list) : named;
    }

    /** The elements of a list under their keys, further ones of a key under its count too ("key#2"); null where keys are missing. */
    static @Nullable Map<String, Object> counted(List<?> list) {
        Map<String, Object> result = LinkedHashMap.newLinkedHashMap(list.size());
        for (Object element : list) {
            String name = key(element);
            if (name == null) {
                return null;
            }
            String key = name;
            for (int n = 2; result.putIfAbsent(key, element) != null; n++) {
                key = name + "#" + n;
            }
        }
        return result;
    }

    /** The elements of a list under their keys; null where ids are missing or not unique. */
    static @Nullable Map<String, Object> named(List<?> list) {
        Map<String, Object> result = LinkedHashMap.newLinkedHashMap(list.size());
        for (Object element : list) {
            String key = key(element);
            if (key == null || result.putIfAbsent(key, element) != null) {
                return null;
            }
        }
        return result;
    }

    private static Map<String, Object> byPlace(List<?> list) {
        Map<String, Object> result = LinkedHashMap.newLinkedHashMap(list.size());
        for (int k = 0; k < list.size(); k++) {
            result.put(String.valueOf(k), Objects.requireNonNull(list.get(k)));
        }
        return result;
    }

    /** What names an element among its siblings; null if nothing does. */
    static @Nullable String key(Object element) {
        if (element instanceof String text) {
            return text;
        }
        return isTree(element) ? Components.of(element).key(element) : null;
    }
}
