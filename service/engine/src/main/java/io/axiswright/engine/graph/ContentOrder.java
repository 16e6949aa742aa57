package io.axiswright.engine.graph;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An order of records and other values by what they hold alone: component by component, so in effect by id, which is the first component
 * of what has one. Two that come out equal hold the same.
 */
final class ContentOrder {

    private ContentOrder() {}

    /** Less than 0 if the first comes before the second, more if it comes after; what is absent comes first. */
    static int compare(@Nullable Object one, @Nullable Object other) {
        if (one == other) {
            return 0;
        }
        if (one == null || other == null) {
            return one == null ? -1 : 1;
        }
        return switch (one) {
            case String text when other instanceof String second -> NaturalOrder.compare(text, second);
            case List<?> list when other instanceof List<?> second -> lists(list, second);
            case Record _ when one.getClass() == other.getClass() -> components(one, other);
            case Comparable<?> value when one.getClass() == other.getClass() -> values(value, other);
            // records of a sealed interface: by kind
            default -> one.getClass().getName().compareTo(other.getClass().getName());
        };
    }

    private static int lists(List<?> one, List<?> other) {
        for (int k = 0; k < one.size() && k < other.size(); k++) {
            int order = compare(one.get(k), other.get(k));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }

    private static int components(Object one, Object other) {
        Components components = Components.of(one);
        for (int k = 0; k < components.count(); k++) {
            int order = compare(components.get(one, k), components.get(other, k));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    @SuppressWarnings("unchecked") // both are of one class, whose values compare with each other
    private static <T> int values(Comparable<T> one, Object other) {
        return one.compareTo((T) other);
    }
}
