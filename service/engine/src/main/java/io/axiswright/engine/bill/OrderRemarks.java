package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** What a buyer would ask about the orders of a bill: it orders what is needed, even where more would cost less. */
final class OrderRemarks {

    private static final String PRACTICE = "common practice, no source";

    /** What is ordered of one item for one section, and what of it is not needed. */
    private record Order(BigDecimal quantity, BigDecimal surplus) {

        Order plus(Order other) {
            return new Order(quantity.add(other.quantity), surplus.add(other.surplus));
        }
    }

    private final BillRequest request;
    private final Function<String, Item> items;
    private final Map<Draft.Lot, Order> orders = new LinkedHashMap<>();

    private OrderRemarks(BillRequest request, Function<String, Item> items, List<BillLine> lines) {
        this.request = request;
        this.items = items;
        for (BillLine line : lines) {
            if (line.unitPrice() != null) {
                orders.merge(
                        new Draft.Lot(line.item(), line.kind().section()),
                        new Order(line.orderQuantity(), line.orderQuantity().subtract(line.quantity())),
                        Order::plus);
            }
        }
    }

    /** The remarks on the lines of a bill; none on a catalogue without terms of sale. */
    static List<Finding> of(BillRequest request, Function<String, Item> items, List<BillLine> lines) {
        List<SaleTerms> terms = request.catalogue().saleTermsList();
        if (terms.isEmpty()) {
            return List.of();
        }
        var remarks = new OrderRemarks(request, items, lines);
        List<Finding> findings = new ArrayList<>(remarks.largerOrders(terms));
        lines.stream()
                .filter(line -> line.kind() == LineKind.SPARE)
                .forEach(line -> remarks.surplus(line).ifPresent(findings::add));
        return findings;
    }

    private List<Finding> largerOrders(List<SaleTerms> terms) {
        Map<String, Integer> places = new HashMap<>();
        for (int k = 0; k < terms.size(); k++) {
            if (!terms.get(k).breaks().isEmpty()) {
                places.put(terms.get(k).item(), k);
            }
        }
        List<Finding> findings = new ArrayList<>();
        orders.forEach((lot, order) -> {
            Integer place = places.get(lot.item());
            if (place != null) {
                cheaper(terms.get(place), order.quantity())
                        .ifPresent(more -> findings.add(FindingCode.BILL_LARGER_ORDER_CHEAPER.at(
                                lot.item(),
                                request.catalogueSource().item("saleTerms", place),
                                PRACTICE,
                                new Ratio(order.quantity().doubleValue()),
                                new Ratio(more.doubleValue()))));
            }
        });
        return findings;
    }

    /** The larger order that costs least, if it costs less. */
    private Optional<BigDecimal> cheaper(SaleTerms terms, BigDecimal ordered) {
        Item item = items.apply(terms.item());
        Money price = item.price();
        if (price == null) {
            return Optional.empty();
        }
        return terms.breaks().stream()
                .map(step -> BigDecimal.valueOf(step.from()))
                .filter(from -> from.compareTo(ordered) > 0)
                .map(from -> wholeReels(item, terms.orderQuantity(from)))
                .filter(more -> cost(terms, price, more).compareTo(cost(terms, price, ordered)) < 0)
                .min(Comparator.comparing(more -> cost(terms, price, more)));
    }

    private static BigDecimal cost(SaleTerms terms, Money price, BigDecimal ordered) {
        return terms.unitPrice(price, ordered).amount().multiply(ordered);
    }

    private static BigDecimal wholeReels(Item item, BigDecimal metres) {
        if (item instanceof BulkCable cable && cable.reelLength() != null) {
            BigDecimal reel = Reels.metres(cable.reelLength());
            return metres.divide(reel, 0, RoundingMode.CEILING).multiply(reel);
        }
        return metres;
    }

    /** Spare parts are an order of their own, so that the machine can be ordered without them. */
    private Optional<Finding> surplus(BillLine spare) {
        Order machine = orders.get(new Draft.Lot(spare.item(), LineKind.REQUIRED));
        return machine == null || machine.surplus().signum() <= 0
                ? Optional.empty()
                : Optional.of(FindingCode.BILL_SPARE_BESIDE_SURPLUS.at(
                        spare.item(),
                        spare.demands().getFirst().pointer(),
                        PRACTICE,
                        new Ratio(machine.surplus().doubleValue()),
                        new Ratio(spare.orderQuantity().doubleValue())));
    }
}
