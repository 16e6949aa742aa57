package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;

/**
 * The price of larger orders.
 *
 * @param from least quantity ordered at this price, up to the next break
 * @param price price of one unit of such an order, in the catalogue's currency
 */
public record PriceBreak(@Bounds(min = 2, max = 1000000) int from, Money price) {}
