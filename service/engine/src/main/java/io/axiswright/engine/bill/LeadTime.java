package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;

/**
 * When all that is required can be there, counted from the order.
 *
 * @param longest longest lead time of a required item; the whole takes at least as long
 * @param criticalItem id of the item that takes so long; the first on the bill where several do
 * @param linesWithout required lines whose lead time is unknown, so that they may take longer
 */
public record LeadTime(
        Time longest, String criticalItem, @Bounds(min = 0) int linesWithout) {}
