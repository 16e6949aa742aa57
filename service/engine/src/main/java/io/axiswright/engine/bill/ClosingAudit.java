package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Proves a finished bill from its lines alone. It explodes nothing: it writes down every reason a line says it has, then
 * strikes out one for each demand and one for each need of an item that stands on a line and each rule that counts it, and sees
 * whether any is lacking or left over.
 */
final class ClosingAudit {

    /** A reason as it must be found on a line. */
    private record Reason(
            int number,
            String line,
            @Nullable String via,
            String asker,
            String pointer,
            String reason,
            @Nullable String rule,
            BigDecimal quantity) {}

    /** What one demand of the request asks of one line. */
    private record Share(int number, String line) {}

    private final List<Demand> demands;
    private final DemandRules rules;
    private final SpareAudit spares;
    private final Map<String, Item> items = new HashMap<>();
    private final Map<String, BillLine> byId = new HashMap<>();
    private final Map<Reason, Integer> open = new LinkedHashMap<>();
    private final Map<String, CutList> cuts;
    private final Map<Draft.Lot, List<BillLine>> lots = new HashMap<>();
    private final List<String> gaps = new ArrayList<>();

    private ClosingAudit(BillRequest request, Map<String, CutList> cuts) {
        this.cuts = cuts;
        request.catalogue().items().forEach(item -> items.put(item.id(), item));
        this.rules = new DemandRules(request, id -> Objects.requireNonNull(items.get(id)));
        this.demands = Stream.concat(request.demands().stream(), rules.demands().stream())
                .toList();
        this.spares = new SpareAudit(request);
    }

    /** Checks the lines of all sections against the request. */
    static ClosingCheck of(BillRequest request, List<BillLine> lines, Map<String, CutList> cuts) {
        return new ClosingAudit(request, cuts).check(lines);
    }

    private ClosingCheck check(List<BillLine> lines) {
        var shares = new LinkedHashMap<Share, BigDecimal>();
        int balanced = 0;
        lines.forEach(line -> lots.merge(lot(line), List.of(line), ClosingAudit::joined));
        for (var line : lines) {
            byId.put(line.id(), line);
            balanced += balances(line) ? 1 : 0;
            spares.note(line);
            if (line.kind() != LineKind.SPARE) {
                writeDown(line, shares);
            }
        }
        int demandsMet = strikeDemands();
        var needs = strikeNeeds(shares);
        int demanded = countDemanded(lines);
        spares.check(items);
        gaps.addAll(spares.gaps());
        return new ClosingCheck(
                demands.size(),
                demandsMet,
                needs[0],
                needs[1],
                lines.size(),
                demanded,
                balanced,
                spares.wanted(),
                spares.met(),
                List.copyOf(gaps));
    }

    private static List<BillLine> joined(List<BillLine> some, List<BillLine> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private void writeDown(BillLine line, Map<Share, BigDecimal> shares) {
        for (var d : line.demands()) {
            open.merge(
                    new Reason(
                            d.number(), line.id(), d.via(), d.asker(), d.pointer(), d.reason(), d.rule(), d.quantity()),
                    1,
                    Integer::sum);
            shares.merge(new Share(d.number(), line.id()), d.quantity(), BigDecimal::add);
        }
    }

    private Item item(BillLine line) {
        return Objects.requireNonNull(items.get(line.item()));
    }

    private boolean balances(BillLine line) {
        var sum = line.demands().stream().map(LineDemand::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
        List<BillLine> lot = lots.getOrDefault(lot(line), List.of());
        if (item(line) instanceof BulkCable cable && cable.reelLength() != null && lot.getFirst() == line) {
            return cutsBalance(lot, cable.reelLength()) && orderSuffices(line);
        }
        var needed = line.unit() == SaleUnit.PIECE ? Draft.wholePieces(before(line, lot), sum) : sum;
        if (sum.compareTo(line.demanded()) != 0 || needed.compareTo(line.quantity()) != 0) {
            gaps.add("line " + line.id() + " has " + line.quantity() + ", its demands sum to " + sum);
            return false;
        }
        return orderSuffices(line);
    }

    /** What the lines of its order before a line demand. */
    private static BigDecimal before(BillLine line, List<BillLine> lot) {
        return lot.subList(0, lot.indexOf(line)).stream()
                .map(BillLine::demanded)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private boolean orderSuffices(BillLine line) {
        if (line.orderQuantity().compareTo(line.quantity()) >= 0) {
            return true;
        }
        gaps.add("line " + line.id() + " orders " + line.orderQuantity() + " where " + line.quantity() + " is needed");
        return false;
    }

    private static Draft.Lot lot(BillLine line) {
        return new Draft.Lot(line.item(), line.kind().section());
    }

    /** The first line of an order has the cut list of all. */
    private boolean cutsBalance(List<BillLine> lot, Length reel) {
        String first = lot.getFirst().id();
        @Nullable CutList cut = cuts.get(first);
        if (cut != null && CutAudit.balances(lot, reel, cut)) {
            return true;
        }
        gaps.add("the cut list of line " + first + " does not cut each of its pieces once from the reels it buys");
        return false;
    }

    private int strikeDemands() {
        int met = 0;
        for (int k = 0; k < demands.size(); k++) {
            var d = demands.get(k);
            var id = BillLine.id(LineKind.of(d.kind()), d.item());
            met += strike(new Reason(
                            k, id, null, d.asker(), d.pointer(), d.reason(), d.rule(), Rules.plain(d.quantity())))
                    ? 1
                    : 0;
        }
        return met;
    }

    /** How many needs hold, and how many of them are met. */
    private int[] strikeNeeds(Map<Share, BigDecimal> shares) {
        var counts = new int[2];
        shares.forEach((share, quantity) -> {
            if (share.number() >= demands.size()) {
                return; // there is no such demand, and so it has no needs; the reason that names it stays open
            }
            var demand = demands.get(share.number());
            var line = Objects.requireNonNull(byId.get(share.line()));
            for (Need need : item(line).needs()) {
                if (Rules.holds(need, demand)) {
                    counts[0]++;
                    var id = BillLine.id(Rules.kind(line.kind(), need.kind()), need.item());
                    counts[1] += strike(new Reason(
                                    share.number(),
                                    id,
                                    line.id(),
                                    demand.asker(),
                                    demand.pointer(),
                                    need.reason(),
                                    null,
                                    Rules.times(quantity, need)))
                            ? 1
                            : 0;
                }
            }
            for (var rule : rules.shares(item(line), demand)) {
                counts[0]++;
                counts[1] += strike(new Reason(
                                share.number(),
                                BillLine.id(
                                        Rules.kind(line.kind(), rule.rule().kind()),
                                        rule.item().id()),
                                line.id(),
                                demand.asker(),
                                demand.pointer(),
                                rule.rule().reason(),
                                rule.rule().id(),
                                Rules.plain(quantity.multiply(rule.perUnit()))))
                        ? 1
                        : 0;
            }
        });
        return counts;
    }

    private boolean strike(Reason reason) {
        @Nullable Integer left = open.get(reason);
        if (left == null) {
            gaps.add("nothing meets the demand of " + reason.asker() + " for " + reason.quantity() + " of line "
                    + reason.line());
            return false;
        }
        if (left == 1) {
            open.remove(reason);
        } else {
            open.put(reason, left - 1);
        }
        return true;
    }

    private int countDemanded(List<BillLine> lines) {
        open.keySet().forEach(r -> gaps.add("line " + r.line() + " gives a reason nobody has: " + r.reason()));
        var unfounded = open.keySet().stream().map(Reason::line).collect(Collectors.toSet());
        int demanded = 0;
        for (var line : lines) {
            if (line.demands().isEmpty()) {
                gaps.add("nobody asks for line " + line.id());
            } else if (!unfounded.contains(line.id())) {
                demanded++;
            }
        }
        return demanded;
    }
}
