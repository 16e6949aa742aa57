package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.DemandRuleCheck;
import io.axiswright.engine.catalogue.SaleTermsCheck;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes the bill of materials: what the design asks for, all that goes with it, and why. */
public final class BillMaking {

    private static final String PRACTICE = "common practice, no source";

    private static final Comparator<Explosion.Key> LINE_ORDER = Comparator.comparingInt(
                    (Explosion.Key key) -> key.offer().kindOrder())
            .thenComparing(key -> key.offer().item().id())
            .thenComparing(Explosion.Key::kind);

    /**
     * Follows every demand's needs, and the catalogue's rules, to the end, joins them to lines and prices them.
     *
     * @throws InvalidDesign if a demand or need names an unknown item, needs lead in a circle, an id is used twice, a
     *     price is in another currency than the catalogue's, terms of sale contradict themselves, or a quantity is not
     *     positive
     */
    public BillResult make(BillRequest request) {
        var faults = new ArrayList<Fault>();
        var offers = Offers.read(request, faults);
        faults.addAll(SaleTermsCheck.faults(request.catalogue(), request.catalogueSource()::pointer));
        faults.addAll(DemandRuleCheck.faults(request.catalogue(), request.catalogueSource()::pointer));
        checkDemands(request.demands(), offers, faults);
        if (!faults.isEmpty()) {
            throw new InvalidDesign(faults);
        }
        var pricing = new Pricing(request);
        var rules = new DemandRules(request, id -> offer(offers, id).item());
        var demands = Stream.concat(request.demands().stream(), rules.demands().stream())
                .toList();
        var asked = Draft.inLots(new Explosion(offers, rules)
                .of(demands).entrySet().stream()
                        .sorted(Map.Entry.comparingByKey(LINE_ORDER))
                        .map(entry -> new Draft(
                                entry.getKey().offer().item(), entry.getKey().kind(), entry.getValue()))
                        .toList());
        var drafts = Reels.cut(Stream.concat(asked.stream(), new SpareParts(request.spares()).of(asked).stream())
                .toList());
        var cuts = new LinkedHashMap<String, CutList>();
        drafts.forEach(draft -> {
            if (draft.cuts() != null) {
                cuts.put(draft.lineId(), draft.cuts());
            }
        });
        var lines = pricing.lines(drafts);
        var required = of(lines, LineKind.REQUIRED);
        var unpriced = lines.stream().filter(line -> line.linePrice() == null).toList();
        return new BillResult(
                request.catalogue().currency(),
                pricing.section(required),
                pricing.section(of(lines, LineKind.OPTIONAL)),
                pricing.section(of(lines, LineKind.CUSTOMER_SUPPLIED)),
                pricing.section(of(lines, LineKind.NO_CHARGE)),
                pricing.section(of(lines, LineKind.SPARE)),
                unpriced.stream().map(BillLine::item).distinct().toList(),
                leadTime(required),
                request.wiring().entries(),
                request.wiring().fieldEnds(),
                List.copyOf(cuts.values()),
                ClosingAudit.of(request, lines, cuts),
                ConnectionAudit.of(request.connections(), request.catalogue(), lines),
                findings(request, lines, unpriced, cuts.values(), offers, rules),
                derivations(lines, cuts));
    }

    private static Offer offer(Map<String, Offer> offers, String item) {
        return Objects.requireNonNull(offers.get(item));
    }

    private static void checkDemands(List<Demand> demands, Map<String, Offer> offers, List<Fault> faults) {
        for (int k = 0; k < demands.size(); k++) {
            var demand = demands.get(k);
            if (!offers.containsKey(demand.item())) {
                faults.add(new Fault(
                        "/demands/" + k + "/item",
                        FaultCode.DANGLING_REFERENCE,
                        "there is no item " + demand.item(),
                        "the id of an item of the catalogue"));
            }
            if (demand.quantity().signum() <= 0) {
                faults.add(new Fault(
                        "/demands/" + k + "/quantity",
                        FaultCode.OUT_OF_RANGE,
                        demand.quantity().toPlainString(),
                        "a quantity above zero"));
            }
        }
    }

    private static List<BillLine> of(List<BillLine> lines, LineKind section) {
        return lines.stream().filter(line -> line.kind().section() == section).toList();
    }

    private static @Nullable LeadTime leadTime(List<BillLine> required) {
        @Nullable Time longest = null;
        String critical = "";
        int without = 0;
        for (var line : required) {
            @Nullable Time time = line.leadTime();
            if (time == null) {
                without++;
            } else if (longest == null || time.si() > longest.si()) {
                longest = time;
                critical = line.item();
            }
        }
        return longest == null ? null : new LeadTime(longest, critical, without);
    }

    private static List<Finding> findings(
            BillRequest request,
            List<BillLine> lines,
            List<BillLine> unpriced,
            Collection<CutList> cuts,
            Map<String, Offer> offers,
            DemandRules rules) {
        var findings = new ArrayList<Finding>();
        if (request.networkUnplanned()) {
            findings.add(FindingCode.BILL_NETWORK_MISSING.at(
                    "the control network", "/design/network", "completeness", null, null));
        }
        request.unconnected()
                .forEach(axis -> findings.add(
                        FindingCode.BILL_AXIS_UNCONNECTED.at(axis, "/design/network", "completeness", null, null)));
        findings.addAll(request.wiring().findings());
        findings.addAll(rules.findings(request.catalogueSource()));
        findings.addAll(Exclusions.findings(request, lines));
        var counts = unpriced.stream()
                .collect(Collectors.groupingBy(BillLine::item, LinkedHashMap::new, Collectors.counting()));
        counts.forEach((item, count) -> findings.add(FindingCode.BILL_ITEM_WITHOUT_PRICE.at(
                item, offer(offers, item).pointer(), PRACTICE, new Ratio(count), new Ratio(lines.size()))));
        for (CutList cut : cuts) {
            cut.longerThanReel()
                    .forEach(piece -> findings.add(FindingCode.BILL_PIECE_LONGER_THAN_REEL.at(
                            cut.item() + " of " + piece.asker(),
                            offer(offers, cut.item()).pointer(),
                            PRACTICE,
                            new Length(piece.length().si() + cut.cutAllowance().si()),
                            cut.reelLength())));
        }
        findings.addAll(OrderRemarks.of(request, id -> offer(offers, id).item(), lines));
        return List.copyOf(findings);
    }

    private static List<Derivation> derivations(List<BillLine> lines, Map<String, CutList> cuts) {
        var derivations = new ArrayList<Derivation>();
        for (var line : lines) {
            if (line.quantity().compareTo(line.demanded()) != 0) {
                derivations.add(new Derivation(
                        line.id(),
                        "n",
                        cuts.containsKey(line.id())
                                ? "length on whole reels, and of pieces longer than one, >= sums of all lines cut from them, - n of the others"
                                : "whole pieces >= sums of all lines of the order up to this, - n of those before",
                        Derivation.inputs("sum", new Ratio(line.demanded().doubleValue())),
                        PRACTICE,
                        new Ratio(line.quantity().doubleValue())));
            }
            if (line.orderQuantity().compareTo(line.quantity()) != 0) {
                derivations.add(new Derivation(
                        line.id(),
                        "n_order",
                        "whole packs >= n of all lines of the order, no less than the minimum order, - n of the others",
                        Derivation.inputs("n", new Ratio(line.quantity().doubleValue())),
                        PRACTICE,
                        new Ratio(line.orderQuantity().doubleValue())));
            }
        }
        return List.copyOf(derivations);
    }
}
