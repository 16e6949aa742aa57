package io.axiswright.engine.study;

import io.axiswright.engine.bill.SaleUnit;
import java.math.BigDecimal;

/**
 * An item of which one market needs more than the other.
 *
 * @param item id of the item in the catalogue
 * @param here what to order of it here; 0 if none
 * @param there what to order of it in the other market; 0 if none
 * @param unit what the quantities count
 */
public record ItemDifference(String item, BigDecimal here, BigDecimal there, SaleUnit unit) {}
