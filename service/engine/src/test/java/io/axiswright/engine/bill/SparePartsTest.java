package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.design.ItemKind;
import io.axiswright.engine.design.SpareRule;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spare parts by hand. */
class SparePartsTest {

    private static final List<SpareRule> RULES =
            List.of(new SpareRule(ItemKind.FOOT_KIT, null, null), new SpareRule(ItemKind.ACCESSORY, 0.1, 2));

    /** 12 drives with 2 plugs each, feet on one with 4 bolts more; a manual that is free and a tool that is optional. */
    private static BillRequest request() {
        var catalogue = new Shop("EUR")
                .foot("foot", "18.00", need("plug", 4, NeedKind.REQUIRED))
                .accessory(
                        "drive",
                        "100.00",
                        need("plug", 2, NeedKind.REQUIRED),
                        need("foot", 1, DemandCondition.FOOT_MOUNTED),
                        need("manual", 1, NeedKind.NO_CHARGE),
                        need("tool", 1, NeedKind.OPTIONAL))
                .accessory("plug", "2.00")
                .accessory("manual", "1.00")
                .accessory("tool", "1.00")
                .terms(new SaleTerms("plug", 10, null, null, null, null))
                .catalogue();
        return new BillRequest(
                catalogue,
                CatalogueSource.SENT,
                List.of(
                        demand("a", "drive", "11", NeedKind.REQUIRED),
                        demand("b", "drive", "1", NeedKind.REQUIRED, DemandCondition.FOOT_MOUNTED)),
                RULES);
    }

    /**
     * Feet: one by default. Drives: 10 % of 12 are 1.2, so 2. Plugs: 12 · 2 + 4 = 28, 10 % are 2.8, so 3, sold as a pack of 10 of
     * their own. 18.00 + 2 · 100.00 + 10 · 2.00 = 238.00. Required is 1200 + 18 + 30 plugs for 28: 60, together 1278.00.
     */
    @Test
    void sparesAreLinesOfTheirOwn() {
        var bill = new BillMaking().make(request());

        assertThat(bill.spares().lines())
                .extracting(BillLine::id, BillLine::quantity, BillLine::orderQuantity)
                .containsExactly(
                        tuple("spare:foot", new BigDecimal(1), new BigDecimal(1)),
                        tuple("spare:drive", new BigDecimal(2), new BigDecimal(2)),
                        tuple("spare:plug", new BigDecimal(3), new BigDecimal(10)));
        assertThat(bill.spares().total()).isEqualTo(new Money(new BigDecimal("238.00"), "EUR"));
        assertThat(bill.required().total()).isEqualTo(new Money(new BigDecimal("1278.00"), "EUR"));
        assertThat(bill.spares().lines().getLast().demands())
                .containsExactly(new LineDemand(
                        1,
                        "spare parts",
                        new BigDecimal(3),
                        "kept for the 28 of the machine",
                        "/design/spares/1",
                        "required:plug"));
        assertThat(bill.closing().spares()).isEqualTo(3);
        assertThat(bill.closing().sparesMet()).isEqualTo(3);
        assertThat(bill.closing().closes()).isTrue();
    }

    /** 28 plugs in packs of 10 leave 2 over, beside the pack of 10 for 3 spares; of drives and feet nothing is left over. */
    @Test
    void sparesBesideASurplusAreRemarked() {
        assertThat(new BillMaking().make(request()).findings())
                .filteredOn(f -> f.code() == FindingCode.BILL_SPARE_BESIDE_SURPLUS)
                .extracting(Finding::subject, Finding::value, Finding::limit, Finding::pointer)
                .containsExactly(tuple("plug", new Ratio(2), new Ratio(10), "/design/spares/1"));
    }

    /** 12.5 m needed: 20 % are 2.5 m, so 3 m, cut from a reel of 10 m of its own; the machine's two pieces need two reels. */
    @Test
    void sparesOfCableOnReelsAreWholeReelsToo() {
        var request = new BillRequest(
                new Shop("EUR").reeled("cable", "1.50", 10, 0).catalogue(),
                CatalogueSource.SENT,
                List.of(demand("a", "cable", "6.5", NeedKind.REQUIRED), demand("b", "cable", "6", NeedKind.REQUIRED)),
                List.of(new SpareRule(ItemKind.BULK_CABLE, 0.2, null)));
        var bill = new BillMaking().make(request);
        assertThat(bill.required().lines())
                .extracting(BillLine::quantity)
                .singleElement()
                .satisfies(metres -> assertThat(metres).isEqualByComparingTo("20"));
        assertThat(bill.spares().lines()).singleElement().satisfies(line -> {
            assertThat(line.demanded()).isEqualByComparingTo("3");
            assertThat(line.quantity()).isEqualByComparingTo("10");
        });
        assertThat(bill.closing().closes()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"10,0.1,1,1", "11,0.1,1,2", "1,0.1,1,1", "30,0.1,5,5", "7,1,1,7", "7,0,1,1", "12.5,0.2,1,3"})
    void theShareIsRoundedUpAndNeverBelowTheLeast(String onMachine, double share, int atLeast, String spares) {
        assertThat(new SpareRule(ItemKind.GATEWAY, share, atLeast).spares(new BigDecimal(onMachine)))
                .isEqualByComparingTo(spares);
    }

    @Test
    void sparesLeftOutOrInventedDoNotClose() {
        var request = request();
        var lines = BillMakingTest.lines(new BillMaking().make(request)).toList();
        var without = lines.stream().filter(l -> !l.id().equals("spare:plug")).toList();
        var ruleless = new BillRequest(request.catalogue(), CatalogueSource.SENT, request.demands());

        assertThat(ClosingAudit.of(request, lines, Map.of()).closes()).isTrue();
        assertThat(ClosingAudit.of(request, without, Map.of()).gaps())
                .containsExactly("there are no spares of plug where 3 are asked for");
        assertThat(ClosingAudit.of(ruleless, lines, Map.of()).gaps())
                .hasSize(3)
                .allMatch(gap -> gap.startsWith("no rule asks"));
    }
}
