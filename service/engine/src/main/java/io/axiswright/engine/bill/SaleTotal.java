package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Money;

/**
 * What a section is sold for.
 *
 * @param total sum of the sale prices of its lines that are known
 * @param margin that, less the sum of the catalogue's prices
 */
public record SaleTotal(Money total, Money margin) {}
