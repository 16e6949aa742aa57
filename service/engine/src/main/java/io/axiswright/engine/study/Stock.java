package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.Item;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The catalogue's items by id; a discipline names what it chose, and this finds it again. */
final class Stock {

    private final Map<String, Item> items = new HashMap<>();

    Stock(Catalogue catalogue) {
        catalogue.items().forEach(item -> items.put(item.id(), item));
    }

    /** The item a discipline chose. */
    <T extends Item> T get(Class<T> type, String id) {
        T item = find(type, id);
        if (item == null) {
            throw new IllegalStateException("no " + type.getSimpleName() + " " + id + " in the catalogue");
        }
        return item;
    }

    /** The item of that id, whatever its kind. */
    @Nullable
    Item find(String id) {
        return items.get(id);
    }

    /** The item a discipline chose, if it chose one. */
    <T extends Item> @Nullable T find(Class<T> type, @Nullable String id) {
        return id == null ? null : type.cast(items.get(id));
    }
}
