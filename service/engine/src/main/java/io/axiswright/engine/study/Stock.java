package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.LaidCable;
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

    /** The cable a discipline laid, with what leads on from it. */
    LaidCable laid(String cable, @Nullable CableExtension extension) {
        var first = get(CableAssembly.class, cable);
        return extension == null
                ? first
                : new CoupledCables(
                        first, get(Item.class, extension.coupler()), get(CableAssembly.class, extension.cable()));
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
