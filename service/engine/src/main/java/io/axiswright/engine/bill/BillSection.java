package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Money;
import java.util.List;

/**
 * The lines that are treated alike.
 *
 * @param lines its lines: by the catalogue's order of item kinds, then by item id
 * @param total sum of the line prices that are known
 */
public record BillSection(List<BillLine> lines, Money total) {}
