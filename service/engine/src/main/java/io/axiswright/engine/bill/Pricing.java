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

    /** Milligrams: what a mass in other units, or a sum of masses, differs by beyond is rounding. */
    private static final int MASS_PLACES = 6;

    private final String currency;
    private final int places;
    private final Selling selling;
    private final Map<String, SaleTerms> terms = new HashMap<>();

    Pricing(BillRequest request) {
        Catalogue catalogue = request.catalogue();
        this.currency = catalogue.currency();
        // currencies without a minor unit (ISO 4217: none or not applicable) are rounded to whole units
        this.places = Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        this.selling = new Selling(request.margins(), places);
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
                selling.price(draft, unitPrice, orderQuantity),
                sold == null || sold.mass() == null
                        ? null
                        : mass(kilograms(sold.mass()).multiply(orderQuantity)),
                sold == null ? null : sold.leadTime(),
                List.copyOf(draft.demands()));
    }

    /** Lines with the sums of their known prices and masses. */
    BillSection section(List<BillLine> lines) {
        var total =
                lines.stream().map(BillLine::linePrice).filter(Objects::nonNull).reduce(zero(), Money::plus);
        var masses = lines.stream().map(BillLine::mass).filter(Objects::nonNull).toList();
        return new BillSection(
                lines,
                total,
                selling.total(lines, total),
                mass(masses.stream().map(Pricing::kilograms).reduce(BigDecimal.ZERO, BigDecimal::add)),
                lines.size() - masses.size());
    }

    private static BigDecimal kilograms(Mass mass) {
        return BigDecimal.valueOf(mass.si());
    }

    private static Mass mass(BigDecimal kilograms) {
        return new Mass(kilograms.setScale(MASS_PLACES, RoundingMode.HALF_UP).doubleValue());
    }

    private Money zero() {
        return toMinorUnit(Money.zero(currency));
    }

    private Money toMinorUnit(Money money) {
        return new Money(money.amount().setScale(places, RoundingMode.HALF_UP), currency);
    }
}
