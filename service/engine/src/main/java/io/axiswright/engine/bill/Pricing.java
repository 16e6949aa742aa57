package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Turns demands into lines with order quantity and price.
 *
 * @param currency ISO 4217 code of the bill
 */
record Pricing(String currency) {

    /** Needs such as "a third per unit" come in as decimals; this many places decide whether a piece is whole. */
    private static final int DECIDING_PLACES = 9;

    /** The line for these demands. */
    BillLine line(Explosion.Key key, List<LineDemand> demands, @Nullable CutList cuts) {
        var item = key.offer().item();
        var unit = SaleUnit.of(item);
        var demanded = Rules.plain(demands.stream().map(LineDemand::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
        var quantity = cuts != null ? Reels.bought(cuts) : unit == SaleUnit.PIECE ? wholePieces(demanded) : demanded;
        boolean charged = Rules.charged(key.kind());
        var unitPrice = charged ? item.price() : null;
        var linePrice = unitPrice != null ? toMinorUnit(unitPrice.times(quantity)) : charged ? null : zero();
        return new BillLine(
                key.lineId(),
                item.id(),
                key.kind(),
                item.description(),
                demanded,
                quantity,
                unit,
                unit.code(),
                unitPrice,
                linePrice,
                List.copyOf(demands));
    }

    /** Lines with the sum of their known prices. */
    BillSection section(List<BillLine> lines) {
        var total =
                lines.stream().map(BillLine::linePrice).filter(Objects::nonNull).reduce(zero(), Money::plus);
        return new BillSection(lines, total);
    }

    static BigDecimal wholePieces(BigDecimal demanded) {
        return demanded.setScale(DECIDING_PLACES, RoundingMode.HALF_UP).setScale(0, RoundingMode.CEILING);
    }

    private Money zero() {
        return toMinorUnit(Money.zero(currency));
    }

    /** Currencies without a minor unit (ISO 4217: none or not applicable) are rounded to whole units. */
    private Money toMinorUnit(Money money) {
        int places = Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        return new Money(money.amount().setScale(places, RoundingMode.HALF_UP), currency);
    }
}
