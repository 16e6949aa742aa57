package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Turns drafts into lines with order quantity and price. The required and conditional lines of one item are one order: packs,
 * minimum order and price breaks count for their sum, and what has to be ordered beyond it stands on the first of them.
 */
final class Pricing {

    private final String currency;
    private final Map<String, SaleTerms> terms = new HashMap<>();

    Pricing(Catalogue catalogue) {
        this.currency = catalogue.currency();
        catalogue.saleTermsList().forEach(t -> terms.put(t.item(), t));
    }

    /** The lines, in the order of the drafts. */
    List<BillLine> lines(List<Draft> drafts) {
        Map<Draft.Lot, BigDecimal> needed = new HashMap<>();
        drafts.forEach(draft -> needed.merge(draft.lot(), draft.quantity(), BigDecimal::add));
        Set<Draft.Lot> begun = new HashSet<>();
        return drafts.stream()
                .map(draft -> line(draft, Objects.requireNonNull(needed.get(draft.lot())), begun.add(draft.lot())))
                .toList();
    }

    private BillLine line(Draft draft, BigDecimal needed, boolean first) {
        var item = draft.item();
        @Nullable SaleTerms sold = terms.get(item.id());
        boolean charged = draft.kind().charged();
        var ordered = sold == null || !charged ? needed : sold.orderQuantity(needed);
        var quantity = draft.quantity();
        var orderQuantity = Rules.plain(first ? quantity.add(ordered).subtract(needed) : quantity);
        @Nullable Money price = charged ? item.price() : null;
        @Nullable Money unitPrice = price == null || sold == null ? price : sold.unitPrice(price, ordered);
        var linePrice = unitPrice != null ? toMinorUnit(unitPrice.times(orderQuantity)) : charged ? null : zero();
        var unit = SaleUnit.of(item);
        return new BillLine(
                draft.lineId(),
                item.id(),
                draft.kind(),
                item.description(),
                draft.demanded(),
                quantity,
                orderQuantity,
                unit,
                unit.code(),
                unitPrice,
                linePrice,
                sold == null || sold.mass() == null
                        ? null
                        : new Mass(sold.mass().si() * orderQuantity.doubleValue()),
                sold == null ? null : sold.leadTime(),
                List.copyOf(draft.demands()));
    }

    /** Lines with the sums of their known prices and masses. */
    BillSection section(List<BillLine> lines) {
        var total =
                lines.stream().map(BillLine::linePrice).filter(Objects::nonNull).reduce(zero(), Money::plus);
        var masses = lines.stream().map(BillLine::mass).filter(Objects::nonNull).toList();
        return new BillSection(
                lines, total, new Mass(masses.stream().mapToDouble(Mass::si).sum()), lines.size() - masses.size());
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
