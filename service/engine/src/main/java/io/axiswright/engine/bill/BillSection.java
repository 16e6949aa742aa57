package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The lines that are treated alike.
 *
 * @param lines its lines: by the catalogue's order of item kinds, then by item id
 * @param total sum of the line prices that are known
 * @param sale what its lines are sold for; absent where the design states no margins
 * @param mass sum of the line masses that are known
 * @param linesWithoutMass how many lines have no known mass
 */
public record BillSection(
        List<BillLine> lines,
        Money total,
        @Nullable SaleTotal sale,
        @Bounds(min = 0) Mass mass,
        @Bounds(min = 0) int linesWithoutMass) {}
