package io.axiswright.engine.comparison;

import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is not as it was in what must be bought.
 *
 * @param lines required and conditional lines; one has changed if its quantity, its order quantity or its price has
 * @param totalBefore total of the first
 * @param totalAfter total of the second
 * @param totalDifference after minus before; absent if they are in two currencies
 */
public record BillChanges(
        ChangeCounts lines,
        Money totalBefore,
        Money totalAfter,
        @Nullable MoneyDifference totalDifference) {

    static BillChanges of(BillSection before, BillSection after) {
        return new BillChanges(
                ChangeCounts.of(byId(before.lines()), byId(after.lines()), BillChanges::same),
                before.total(),
                after.total(),
                Deltas.ofMoney(before.total(), after.total()));
    }

    private static Map<String, BillLine> byId(List<BillLine> lines) {
        return lines.stream().collect(Collectors.toMap(BillLine::id, Function.identity()));
    }

    private static boolean same(BillLine one, BillLine other) {
        return one.quantity().compareTo(other.quantity()) == 0
                && one.orderQuantity().compareTo(other.orderQuantity()) == 0
                && Objects.equals(one.linePrice(), other.linePrice());
    }
}
