package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Alternate;
import io.axiswright.engine.catalogue.AlternateChoice;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandBasis;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.DemandRule;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.condition.Condition;
import io.axiswright.engine.condition.Facts;
import io.axiswright.engine.condition.FlagAttribute;
import io.axiswright.engine.condition.FlagTest;
import io.axiswright.engine.condition.QuantityAttribute;
import io.axiswright.engine.condition.QuantityTest;
import io.axiswright.engine.condition.Reach;
import io.axiswright.engine.condition.Relation;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Demand rules by hand: each expected number is worked out beside it. */
class DemandRulesTest {

    private static final Condition BRAKED = new FlagTest(FlagAttribute.HOLDING_BRAKE);
    private static final Condition THICK =
            new QuantityTest(QuantityAttribute.CIRCUIT_CURRENT, Relation.ABOVE, new Current(20));

    /** A machine of two axes, the lift with a brake and on feet, and two circuits of 16 A and 25 A. */
    private static final List<Asker> ASKERS = List.of(
            new Asker(Reach.MACHINE, "the machine", "/design", List.of(), machine(Map.of(), Set.of())),
            new Asker(
                    Reach.AXIS,
                    "axis lift",
                    "/design/axes/0",
                    List.of(DemandCondition.FOOT_MOUNTED),
                    machine(Map.of(), Set.of(FlagAttribute.HOLDING_BRAKE))),
            new Asker(Reach.AXIS, "axis feed", "/design/axes/1", List.of(), machine(Map.of(), Set.of())),
            circuit("circuit C1", 16),
            circuit("circuit C2", 25));

    private static Asker circuit(String name, double current) {
        return new Asker(
                Reach.CIRCUIT,
                name,
                "/design/installation",
                List.of(),
                machine(Map.of(QuantityAttribute.CIRCUIT_CURRENT, new Current(current)), Set.of()));
    }

    private static Facts machine(
            Map<QuantityAttribute, io.axiswright.engine.quantity.Quantity> quantities, Set<FlagAttribute> flags) {
        return new Facts(Map.of(QuantityAttribute.AXES, new Ratio(2)), Map.of(), Set.of())
                .and(new Facts(quantities, Map.of(), flags));
    }

    private static DemandRule rule(
            String id, DemandBasis per, @Nullable Condition when, double quantity, String... items) {
        return new DemandRule(
                id,
                per,
                null,
                null,
                when,
                when == null ? NeedKind.REQUIRED : NeedKind.CONDITIONAL,
                quantity,
                List.of(items).stream().map(item -> new Alternate(item, null)).toList(),
                null,
                "because of " + id);
    }

    private static DemandRule counting(String item, DemandRule rule) {
        return Copies.with(rule, "countedItem", item);
    }

    private static BillResult bill(Shop shop, Demand... demands) {
        return bill(shop.catalogue(), demands);
    }

    private static BillResult bill(Catalogue catalogue, Demand... demands) {
        var bill = new BillMaking()
                .make(Copies.with(
                        new BillRequest(catalogue, CatalogueSource.SENT, List.of(demands)), "askers", ASKERS));
        assertThat(bill.closing().gaps()).isEmpty();
        return bill;
    }

    private static List<String> lines(BillResult bill) {
        return BillMakingTest.lines(bill)
                .map(line -> line.id() + " " + line.quantity().toPlainString())
                .toList();
    }

    @Test
    void countsPartsOfTheDesign() {
        var bill = bill(new Shop("EUR")
                .accessory("log", "9.00")
                .accessory("plate", "2.00", need("screw", 4, NeedKind.REQUIRED))
                .accessory("screw", "0.10")
                .accessory("warning", "1.50")
                .accessory("marker", "0.40")
                .rule(rule("one-log", DemandBasis.MACHINE, null, 1, "log"))
                .rule(rule("plates", DemandBasis.AXIS, null, 2, "plate"))
                .rule(rule("warnings", DemandBasis.AXIS, BRAKED, 1, "warning"))
                .rule(rule("markers", DemandBasis.CIRCUIT, THICK, 3, "marker")));

        // plates 2 · 2 axes, screws 4 on each, one braked axis, one circuit above 20 A
        assertThat(lines(bill))
                .containsExactly(
                        "required:log 1",
                        "conditional:marker 3",
                        "required:plate 4",
                        "required:screw 16",
                        "conditional:warning 1");
        // 9.00 + 3 · 0.40 + 4 · 2.00 + 16 · 0.10 + 1.50
        assertThat(bill.required().total().amount()).isEqualByComparingTo("21.30");
        // 1 + 2 + 1 + 1 demands; the screws of each of two plates
        assertThat(bill.closing())
                .extracting(
                        ClosingCheck::demands, ClosingCheck::demandsMet, ClosingCheck::needs, ClosingCheck::needsMet)
                .containsExactly(5, 5, 2, 2);
    }

    @Test
    void theDemandNamesTheRule() {
        var bill = bill(
                new Shop("EUR")
                        .accessory("drive", "100")
                        .accessory("marker", "0.40")
                        .rule(rule("per-circuit", DemandBasis.CIRCUIT, THICK, 1, "marker"))
                        .rule(counting("drive", rule("per-drive", DemandBasis.ITEM, null, 2, "marker"))),
                demand("axis lift", "drive", "1", NeedKind.REQUIRED));

        // demand 0 is the design's, demand 1 that of the first rule
        assertThat(BillMakingTest.lines(bill).filter(l -> l.id().equals("conditional:marker")))
                .singleElement()
                .extracting(BillLine::demands)
                .isEqualTo(List.of(new LineDemand(
                        1,
                        "circuit C2",
                        BigDecimal.ONE,
                        "because of per-circuit",
                        "/design/installation",
                        null,
                        "per-circuit")));
        assertThat(BillMakingTest.lines(bill).filter(l -> l.id().equals("required:marker")))
                .singleElement()
                .extracting(BillLine::demands)
                .isEqualTo(List.of(new LineDemand(
                        0,
                        "axis lift",
                        BigDecimal.TWO,
                        "because of per-drive",
                        "/design/axis lift",
                        "required:drive",
                        "per-drive")));
    }

    /** What a rule brings is counted by the next, to the end. */
    @Test
    void followsRulesAndNeedsToAFixedPoint() {
        var bill = bill(
                new Shop("EUR")
                        .accessory("drive", "100", need("plug", 2, NeedKind.REQUIRED))
                        .accessory("plug", "5")
                        .accessory("seal", "1", need("grease", 0.25, NeedKind.REQUIRED))
                        .accessory("grease", "3")
                        .accessory("rag", "0")
                        .rule(counting("plug", rule("seals", DemandBasis.ITEM, null, 3, "seal")))
                        .rule(counting("grease", rule("rags", DemandBasis.ITEM, null, 2, "rag"))),
                demand("axis lift", "drive", "2", NeedKind.REQUIRED));

        // plugs 2 · 2, seals 4 · 3, grease 12 / 4, rags 3 · 2
        assertThat(lines(bill))
                .containsExactly(
                        "required:drive 2",
                        "required:grease 3",
                        "required:plug 4",
                        "required:rag 6",
                        "required:seal 12");
    }

    /** Markers every 5 m: 12 + 9 m of cable are 21 / 5 = 4.2, so 5; two spurs of 5 m have two more of another rule. */
    @Test
    void countsMetresOfCable() {
        var ofBulk = Copies.with(
                rule("markers", DemandBasis.LENGTH, null, 0.2, "marker"), "countedKind", ItemKind.BULK_CABLE);
        var bill = bill(
                new Shop("EUR")
                        .cable("power-4x2.5", "3.20")
                        .cable("power-4x4", "4.20")
                        .spur("spur-5")
                        .accessory("marker", "0.40")
                        .accessory("ring", "0.10")
                        .rule(ofBulk)
                        .rule(counting("spur-5", rule("rings", DemandBasis.LENGTH, null, 0.2, "ring"))),
                demand("circuit C1", "power-4x2.5", "12", NeedKind.REQUIRED),
                demand("circuit C2", "power-4x4", "9", NeedKind.REQUIRED),
                demand("axis lift", "spur-5", "2", NeedKind.REQUIRED));

        assertThat(lines(bill))
                .containsExactly(
                        "required:spur-5 2",
                        "required:power-4x2.5 12",
                        "required:power-4x4 9",
                        "required:marker 5",
                        "required:ring 2");
    }

    @Test
    void takesTheFirstOrTheCheapestAdmissibleAlternate() {
        var alternates =
                List.of(new Alternate("large", THICK), new Alternate("fine", null), new Alternate("plain", null));
        var ordered = Copies.with(rule("o", DemandBasis.CIRCUIT, null, 1, "fine"), "alternates", alternates);
        var cheapest = Copies.with(Copies.with(ordered, "id", "c"), "choice", AlternateChoice.CHEAPEST);
        var shop = new Shop("EUR")
                .accessory("large", "1.00")
                .accessory("fine", "8.00")
                .accessory("plain", "3.00");

        // C1 with 16 A may not take "large", C2 with 25 A may
        assertThat(lines(bill(Copies.with(shop.catalogue(), "demandRules", List.of(ordered)))))
                .containsExactly("required:fine 1", "required:large 1");
        assertThat(lines(bill(Copies.with(shop.catalogue(), "demandRules", List.of(cheapest)))))
                .containsExactly("required:large 1", "required:plain 1");
    }

    @Test
    void tellsWhereNoAlternateIsAdmissible() {
        var never = Copies.with(
                rule("never", DemandBasis.CIRCUIT, null, 1, "a"), "alternates", List.of(new Alternate("a", THICK)));
        var bill = bill(new Shop("EUR")
                .accessory("a", "1")
                .rule(rule("x", DemandBasis.MACHINE, null, 1, "a"))
                .rule(never));

        // only C1, of 16 A, goes without
        assertThat(lines(bill)).containsExactly("required:a 2");
        assertThat(bill.findings())
                .singleElement()
                .isEqualTo(FindingCode.BILL_RULE_UNMET.at(
                        "never",
                        "/inlineCatalogue/demandRules/1",
                        "the catalogue's rule: because of never",
                        new Ratio(1),
                        null));
    }

    @Test
    void theCustomerMaySupplyWhatARuleAsksFor() {
        var rule = Copies.with(rule("tool", DemandBasis.AXIS, null, 1, "wrench"), "kind", NeedKind.CUSTOMER_SUPPLIED);
        var bill = bill(new Shop("EUR").accessory("wrench", "80.00").rule(rule));

        assertThat(bill.customerSupplied().lines())
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualByComparingTo("2"));
        assertThat(bill.customerSupplied().total().amount()).isEqualByComparingTo("0");
        assertThat(bill.required().lines()).isEmpty();
    }

    @Test
    void itemsThatExcludeEachOtherAreAViolation() {
        var shop = new Shop("EUR")
                .accessory("a", "1")
                .accessory("b", "1")
                .accessory("c", "1")
                .exclude("a", "c")
                .exclude("b", "a");

        var bill = bill(
                shop,
                demand("x", "a", "2", NeedKind.REQUIRED),
                demand("x", "b", "3", NeedKind.CUSTOMER_SUPPLIED),
                demand("x", "c", "1", NeedKind.OPTIONAL)); // may be left out, so it is told, but is no trouble

        assertThat(bill.findings())
                .containsExactly(
                        excluded(FindingCode.BILL_OPTION_EXCLUDED, "c beside a", 0, 1, 2),
                        excluded(FindingCode.BILL_ITEMS_EXCLUDED, "b beside a", 1, 3, 2));
        assertThat(bill.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE, Severity.VIOLATION);
    }

    @Test
    void optionsThatExcludeEachOtherAreTold() {
        var shop = new Shop("EUR")
                .accessory("a", "1")
                .accessory("b", "1")
                .accessory("c", "1")
                .exclude("a", "b")
                .exclude("b", "c");

        var bill = bill(shop, demand("x", "a", "2", NeedKind.OPTIONAL), demand("x", "b", "5", NeedKind.OPTIONAL));

        assertThat(bill.findings()).containsExactly(excluded(FindingCode.BILL_OPTION_EXCLUDED, "a beside b", 0, 2, 5));
    }

    private static Finding excluded(FindingCode code, String subject, int place, int one, int other) {
        return code.at(
                subject,
                "/inlineCatalogue/exclusions/" + place,
                "the catalogue's exclusion: they collide",
                new Ratio(one),
                new Ratio(other));
    }

    @Test
    void anAuditTellsALineWhoseRuleDoesNotAsk() {
        var shop = new Shop("EUR").accessory("a", "1").rule(rule("r", DemandBasis.CIRCUIT, THICK, 1, "a"));
        var request = Copies.with(new BillRequest(shop.catalogue(), CatalogueSource.SENT, List.of()), "askers", ASKERS);
        var lines = new BillMaking().make(request).required().lines();
        var without = Copies.with(request, "askers", List.of());

        assertThat(ClosingAudit.of(request, lines, Map.of()).gaps()).isEmpty();
        assertThat(ClosingAudit.of(without, lines, Map.of()).gaps())
                .containsExactly("line conditional:a gives a reason nobody has: because of r");
    }

    @Test
    void findsWhatIsWrongWithRules() {
        var braked = rule("braked", DemandBasis.CIRCUIT, BRAKED, 1, "a");
        var catalogue = new Shop("EUR")
                .accessory("a", "1")
                .cable("c", "1")
                .rule(rule("twice", DemandBasis.AXIS, null, 1, "a", "ghost"))
                .rule(Copies.with(rule("twice", DemandBasis.AXIS, null, 1, "a"), "countedKind", ItemKind.ACCESSORY))
                .rule(rule("nothing", DemandBasis.ITEM, null, 1, "a"))
                .rule(counting(
                        "ghost",
                        Copies.with(rule("both", DemandBasis.ITEM, null, 1, "a"), "countedKind", ItemKind.GATEWAY)))
                .rule(counting("a", rule("short", DemandBasis.LENGTH, null, 1, "c")))
                .rule(Copies.with(braked, "kind", NeedKind.REQUIRED))
                .rule(Copies.with(rule("bare", DemandBasis.AXIS, null, 1, "a"), "kind", NeedKind.CONDITIONAL))
                .exclude("a", "a")
                .exclude("a", "ghost")
                .catalogue();

        assertThat(CatalogueCheck.faults(catalogue, "/inlineCatalogue"))
                .extracting(Fault::pointer, Fault::code)
                .containsExactly(
                        tuple("/inlineCatalogue/demandRules/0/alternates/1/item", FaultCode.DANGLING_REFERENCE),
                        tuple("/inlineCatalogue/demandRules/1/id", FaultCode.DUPLICATE_ID),
                        tuple("/inlineCatalogue/demandRules/1/countedKind", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/demandRules/2/countedItem", FaultCode.MISSING),
                        tuple("/inlineCatalogue/demandRules/3/countedKind", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/demandRules/3/countedItem", FaultCode.DANGLING_REFERENCE),
                        tuple("/inlineCatalogue/demandRules/4/countedItem", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/demandRules/5/when", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/demandRules/5/when/attribute", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/demandRules/6/when", FaultCode.MISSING),
                        tuple("/inlineCatalogue/exclusions/0/other", FaultCode.INCONSISTENT),
                        tuple("/inlineCatalogue/exclusions/1/other", FaultCode.DANGLING_REFERENCE));
        assertThatThrownBy(() -> bill(catalogue)).isInstanceOf(InvalidDesign.class);
    }

    @Test
    void findsCirclesThroughRules() {
        var byItem = new Shop("EUR")
                .accessory("a", "1", need("b", 1, NeedKind.OPTIONAL))
                .accessory("b", "1")
                .accessory("c", "1")
                .rule(counting("b", rule("back", DemandBasis.ITEM, null, 1, "c", "a")));
        var byKind = new Shop("EUR")
                .accessory("a", "1")
                .cable("c", "1")
                .rule(Copies.with(rule("self", DemandBasis.ITEM, null, 1, "a"), "countedKind", ItemKind.ACCESSORY))
                .rule(Copies.with(rule("fine", DemandBasis.LENGTH, null, 1, "a"), "countedKind", ItemKind.BULK_CABLE));

        assertThat(CatalogueCheck.faults(byItem.catalogue(), ""))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.pointer()).isEqualTo("/demandRules/0/alternates/1/item");
                    assertThat(fault.code()).isEqualTo(FaultCode.CYCLIC_NEEDS);
                    assertThat(fault.detail()).isEqualTo("a needs b needs by rule back a.");
                });
        assertThat(CatalogueCheck.faults(byKind.catalogue(), ""))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.pointer()).isEqualTo("/demandRules/0/alternates/0/item");
                    assertThat(fault.detail()).isEqualTo("a needs by rule self a.");
                });
    }
}
