package io.axiswright.engine.comparison;

import com.fasterxml.jackson.annotation.JsonIgnore;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Reads and rebuilds records by their components, so that comparing needs no code per type. */
final class Records {

    /** Components that name an element among its siblings, best first. */
    private static final List<String> KEYS = List.of("id", "axis", "circuit", "node", "item", "name", "symbol");

    private Records() {}

    /** Whether a record is compared component by component; quantities and the like are single values. */
    static boolean isTree(@Nullable Object value) {
        return value instanceof Record
                && !(value instanceof Quantity)
                && !(value instanceof Money)
                && !(value instanceof ConductorSize);
    }

    /** The components that are part of the wire form. */
    static List<RecordComponent> components(Object value) {
        return Arrays.stream(value.getClass().getRecordComponents())
                .filter(c -> !c.getAccessor().isAnnotationPresent(JsonIgnore.class))
                .toList();
    }

    static @Nullable Object get(Object owner, RecordComponent component) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    /** A copy of the record in which one component has another value. */
    static Object with(Object owner, String name, @Nullable Object value) {
        RecordComponent[] all = owner.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[all.length];
        Class<?>[] types = new Class<?>[all.length];
        for (int k = 0; k < all.length; k++) {
            types[k] = all[k].getType();
            values[k] = all[k].getName().equals(name) ? value : get(owner, all[k]);
        }
        try {
            var constructor = owner.getClass().getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot rebuild " + owner.getClass(), e);
        }
    }

    /** The elements of a list under their keys; by place where ids are missing or not unique. */
    static Map<String, Object> keyed(List<?> list) {
        List<String> keys = new ArrayList<>();
        for (Object element : list) {
            String key = key(element);
            if (key != null) {
                keys.add(key);
            }
        }
        boolean byKey = keys.size() == list.size() && new HashSet<>(keys).size() == list.size();
        Map<String, Object> result = new LinkedHashMap<>();
        for (int k = 0; k < list.size(); k++) {
            result.put(byKey ? keys.get(k) : String.valueOf(k), Objects.requireNonNull(list.get(k)));
        }
        return result;
    }

    private static @Nullable String key(Object element) {
        if (element instanceof String text) {
            return text;
        }
        if (!isTree(element)) {
            return null;
        }
        for (String name : KEYS) {
            for (RecordComponent component : element.getClass().getRecordComponents()) {
                if (component.getName().equals(name) && get(element, component) instanceof String text) {
                    return text;
                }
            }
        }
        return null;
    }
}
