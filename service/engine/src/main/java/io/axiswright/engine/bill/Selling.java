package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Shelf;
import io.axiswright.engine.design.LineClass;
import io.axiswright.engine.design.MarginRule;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Sells lines at the margins of the design.
 *
 * @param margins its rules; nothing is sold where there are none
 * @param places decimal places of the currency's minor unit
 */
record Selling(List<MarginRule> margins, int places) {

    /** The sale price of a line; absent where nothing is sold, and for lines without a price or charge. */
    @Nullable
    SalePrice price(Draft draft, @Nullable Money unitPrice, BigDecimal orderQuantity) {
        if (margins.isEmpty() || unitPrice == null) {
            return null;
        }
        LineClass lines = lines(draft.kind());
        double margin = margins.stream()
                .filter(rule -> rule.fits(Shelf.of(draft.item()).kind(), lines))
                .max(Comparator.comparingInt(MarginRule::closeness))
                .map(MarginRule::margin)
                .orElse(0.0);
        BigDecimal cost = unitPrice.amount();
        var sale = new Money(
                cost.divide(
                        BigDecimal.ONE.subtract(BigDecimal.valueOf(margin)),
                        Math.max(places, cost.scale()),
                        RoundingMode.HALF_UP),
                unitPrice.currency());
        return new SalePrice(
                margin,
                sale,
                new Money(sale.times(orderQuantity).amount().setScale(places, RoundingMode.HALF_UP), sale.currency()));
    }

    private static LineClass lines(LineKind kind) {
        return switch (kind) {
            case REQUIRED, CONDITIONAL -> LineClass.REQUIRED;
            case OPTIONAL -> LineClass.OPTIONAL;
            case SPARE -> LineClass.SPARE;
            case CUSTOMER_SUPPLIED, NO_CHARGE -> throw new IllegalArgumentException(kind + " lines have no price");
        };
    }

    /** What a section of those lines, whose catalogue prices sum to that total, is sold for; absent where nothing is sold. */
    @Nullable
    SaleTotal total(List<BillLine> lines, Money total) {
        if (margins.isEmpty()) {
            return null;
        }
        Money sold = lines.stream()
                .map(BillLine::sale)
                .filter(Objects::nonNull)
                .map(SalePrice::linePrice)
                .reduce(total.times(BigDecimal.ZERO), Money::plus);
        return new SaleTotal(sold, new Money(sold.amount().subtract(total.amount()), total.currency()));
    }
}
