package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;

/**
 * What a line is sold for.
 *
 * @param margin share of the sale price that is not the catalogue's price; 0 where no rule of the design fits the line
 * @param unitPrice sale price of one unit: the line's unit price over (1 − margin), rounded half up to as many decimal places as
 *     that has, and no fewer than the currency's minor unit
 * @param linePrice that times the line's {@code orderQuantity}, rounded half up to the currency's minor unit
 */
public record SalePrice(@Bounds(min = 0, max = 0.99) double margin, Money unitPrice, Money linePrice) {}
