package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import org.jspecify.annotations.Nullable;

/**
 * Something that goes with an item.
 *
 * @param item id of the item needed
 * @param quantity how many per unit of the item that needs it
 * @param kind how binding it is
 * @param when the condition of a CONDITIONAL need; absent for the others
 * @param reason why, in words a buyer understands
 */
public record Need(
        String item,
        @Bounds(above = 0, max = 10000) double quantity,
        NeedKind kind,
        @Nullable DemandCondition when,
        String reason) {}
