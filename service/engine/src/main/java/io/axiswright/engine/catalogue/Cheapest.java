package io.axiswright.engine.catalogue;

import io.axiswright.engine.graph.NaturalOrder;
import java.math.BigDecimal;
import java.util.Comparator;

/** Which of several items that serve is bought: the cheapest; one on request after all that have a price; then by id. */
public final class Cheapest {

    /** The order, the one to buy first. */
    public static final Comparator<Item> FIRST = Comparator.comparing((Item item) -> item.price() == null)
            .thenComparing(item ->
                    item.price() == null ? BigDecimal.ZERO : item.price().amount())
            .thenComparing(Item::id, NaturalOrder.OF_NAMES);

    private Cheapest() {}
}
