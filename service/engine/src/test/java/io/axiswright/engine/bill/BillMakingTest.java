package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The bill by hand: each expected number is worked out beside it. */
class BillMakingTest {

    private static final Catalogue MACHINE = new Shop("EUR")
            .cable("power-4x2.5", "3.20", need("ferrule", 0.4, NeedKind.REQUIRED))
            .foot("foot-80", "18.00", need("bolt-m8", 4, NeedKind.REQUIRED))
            .accessory(
                    "drive",
                    "1000.00",
                    need("plug", 1, NeedKind.REQUIRED),
                    need("power-4x2.5", 7.5, NeedKind.REQUIRED),
                    need("foot-80", 1, DemandCondition.FOOT_MOUNTED),
                    need("service-tool", 1, NeedKind.OPTIONAL),
                    need("host-licence", 1, NeedKind.CUSTOMER_SUPPLIED),
                    need("manual", 1, NeedKind.NO_CHARGE))
            .accessory("plug", "9.95", need("ferrule", 4, NeedKind.REQUIRED))
            .accessory("ferrule", "0.105")
            .accessory("bolt-m8", "0.40")
            .accessory("service-tool", "80.00", need("tool-cable", 1, NeedKind.REQUIRED))
            .accessory("tool-cable", "12.00", need("manual", 1, NeedKind.NO_CHARGE))
            .accessory("host-licence", "500.00")
            .accessory("manual", "15.00")
            .catalogue();

    private static BillResult bill(Catalogue catalogue, Demand... demands) {
        return new BillMaking().make(new BillRequest(catalogue, CatalogueSource.SENT, List.of(demands)));
    }

    static Stream<BillLine> lines(BillResult bill) {
        return Stream.of(bill.required(), bill.optional(), bill.customerSupplied(), bill.noCharge(), bill.spares())
                .flatMap(section -> section.lines().stream());
    }

    private static BillLine line(BillResult bill, String id) {
        return lines(bill).filter(l -> l.id().equals(id)).findFirst().orElseThrow();
    }

    private static Money eur(String amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    /**
     * 2.4 pieces required, some more by condition and 0.4 optional, at 10.00. 2.4 take 3 pieces, whose last leaves 0.6: 0.4 more
     * come out of it, 0.8 more (3.2 in all) take a fourth. The optional 0.4 may be bought apart, so they take a piece of their own.
     */
    @ParameterizedTest
    @CsvSource({"0.4,0,30.00", "0.6,0,30.00", "0.8,1,40.00", "1.6,1,40.00"})
    void whatIsLeftOfAPieceServesTheConditionalLine(String more, String quantity, String total) {
        var bill = bill(
                new Shop("EUR").accessory("sheet", "10.00").catalogue(),
                demand("a", "sheet", "2.4", NeedKind.REQUIRED),
                demand("b", "sheet", more, NeedKind.CONDITIONAL),
                demand("c", "sheet", "0.4", NeedKind.OPTIONAL));

        assertThat(line(bill, "required:sheet").quantity()).isEqualTo("3");
        assertThat(line(bill, "conditional:sheet").quantity()).isEqualTo(quantity);
        assertThat(line(bill, "conditional:sheet").demanded()).isEqualTo(more);
        assertThat(line(bill, "optional:sheet").quantity()).isEqualTo("1");
        assertThat(bill.required().total()).isEqualTo(eur(total));
        assertThat(bill.closing().gaps()).isEmpty();
    }

    @Test
    void explodesByHand() {
        var bill = bill(
                MACHINE,
                demand("lift", "drive", "1", NeedKind.REQUIRED, DemandCondition.FOOT_MOUNTED),
                demand("feed", "drive", "1", NeedKind.REQUIRED));

        // order: bulk cables, feet, accessories by id; conditional lines in their place
        assertThat(bill.required().lines())
                .extracting(BillLine::id)
                .containsExactly(
                        "required:power-4x2.5",
                        "conditional:foot-80",
                        "conditional:bolt-m8",
                        "required:drive",
                        "required:ferrule",
                        "required:plug");
        assertThat(line(bill, "required:power-4x2.5").quantity()).isEqualTo("15"); // 2 x 7.5 m
        assertThat(line(bill, "required:power-4x2.5").unitCode()).isEqualTo("MTR");
        // per drive 1 plug x 4 + 7.5 m x 0.4 = 7; two drives 14
        assertThat(line(bill, "required:ferrule").quantity()).isEqualTo("14");
        assertThat(line(bill, "required:ferrule").unitCode()).isEqualTo("H87");
        assertThat(line(bill, "required:ferrule").linePrice()).isEqualTo(eur("1.47")); // 14 x 0.105
        assertThat(line(bill, "conditional:bolt-m8").quantity()).isEqualTo("4"); // only the foot-mounted axis
        // 15 x 3.20 + 18.00 + 4 x 0.40 + 2 x 1000.00 + 1.47 + 2 x 9.95
        assertThat(bill.required().total()).isEqualTo(eur("2088.97"));

        assertThat(bill.optional().lines())
                .extracting(BillLine::id)
                .containsExactly("optional:manual", "optional:service-tool", "optional:tool-cable");
        assertThat(bill.optional().total()).isEqualTo(eur("214.00")); // 2 x (15 + 80 + 12)
        assertThat(bill.customerSupplied().lines())
                .extracting(BillLine::id)
                .containsExactly("customer-supplied:host-licence");
        assertThat(bill.customerSupplied().total()).isEqualTo(eur("0.00"));
        assertThat(bill.noCharge().lines()).extracting(BillLine::id).containsExactly("no-charge:manual");
        assertThat(bill.noCharge().total()).isEqualTo(eur("0.00"));

        // direct 2; needs per drive 5 (6 with feet), feet 1, plug 1, cable 1, tool 1, tool cable 1
        assertThat(bill.closing()).isEqualTo(new ClosingCheck(2, 2, 20, 20, 11, 11, 11, 0, 0, List.of()));
        assertThat(bill.findings()).isEmpty();
    }

    @Test
    void everyLineSaysWhoAskedAndThroughWhat() {
        var bill = bill(MACHINE, demand("lift", "drive", "2", NeedKind.REQUIRED, DemandCondition.FOOT_MOUNTED));

        assertThat(line(bill, "required:ferrule").demands())
                .containsExactlyInAnyOrder(
                        new LineDemand(0, "lift", new BigDecimal(8), "goes with it", "/design/lift", "required:plug"),
                        new LineDemand(
                                0, "lift", new BigDecimal(6), "goes with it", "/design/lift", "required:power-4x2.5"));
        assertThat(line(bill, "conditional:foot-80").demands())
                .containsExactly(new LineDemand(
                        0, "lift", new BigDecimal(2), "for FOOT_MOUNTED", "/design/lift", "required:drive"));
        assertThat(line(bill, "required:drive").demands())
                .containsExactly(new LineDemand(0, "lift", new BigDecimal(2), "asked by lift", "/design/lift", null));
    }

    @Test
    void conditionsHoldAllTheWayDown() {
        var catalogue = new Shop("EUR")
                .accessory("top", "1", need("middle", 1, NeedKind.REQUIRED))
                .accessory("middle", "1", need("bottom", 3, DemandCondition.KEEP_ALIVE))
                .accessory("bottom", "1")
                .catalogue();

        var with = bill(catalogue, demand("a", "top", "2", NeedKind.REQUIRED, DemandCondition.KEEP_ALIVE));
        var without = bill(catalogue, demand("a", "top", "2", NeedKind.REQUIRED, DemandCondition.HOLDING_BRAKE));

        assertThat(line(with, "conditional:bottom").quantity()).isEqualTo("6");
        assertThat(lines(without)).extracting(BillLine::item).doesNotContain("bottom");
    }

    @Test
    void piecesAreRoundedUpOncePerLineAndMetresAreNot() {
        var catalogue = new Shop("EUR")
                .cable("cable", "2.00")
                .accessory(
                        "joint", "0", need("adhesive", 0.1, NeedKind.REQUIRED), need("cable", 0.35, NeedKind.REQUIRED))
                .accessory("adhesive", "25.00")
                .catalogue();

        var three = bill(
                catalogue, demand("a", "joint", "1", NeedKind.REQUIRED), demand("b", "joint", "2", NeedKind.REQUIRED));
        var ten = bill(catalogue, demand("a", "joint", "10", NeedKind.REQUIRED));

        assertThat(line(three, "required:adhesive").demanded()).isEqualTo("0.3");
        assertThat(line(three, "required:adhesive").quantity()).isEqualTo("1");
        assertThat(line(three, "required:cable").quantity()).isEqualTo("1.05");
        assertThat(line(ten, "required:adhesive").quantity()).isEqualTo("1"); // 10 x 0.1 is exactly 1, decimal
        assertThat(three.derivations()).extracting(d -> d.subject()).containsExactly("required:adhesive");
        assertThat(three.derivations().getFirst().result().si()).isEqualTo(1);
    }

    @Test
    void saysWhatHasNoPrice() {
        var catalogue = new Shop("EUR")
                .accessory(
                        "a",
                        "10.00",
                        need("b", 1, NeedKind.REQUIRED),
                        need("b", 1, NeedKind.OPTIONAL),
                        need("c", 1, NeedKind.CUSTOMER_SUPPLIED))
                .accessory("b", null)
                .accessory("c", null)
                .catalogue();

        var bill = bill(catalogue, demand("x", "a", "1", NeedKind.REQUIRED));

        assertThat(bill.withoutPrice()).containsExactly("b"); // the customer's own needs no price
        assertThat(bill.required().total()).isEqualTo(eur("10.00"));
        assertThat(bill.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.BILL_ITEM_WITHOUT_PRICE);
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.pointer()).isEqualTo("/inlineCatalogue/accessories/1");
            assertThat(finding.text()).contains("Item b", "2 of 4 lines");
        });
    }

    /** ISO 4217 minor units: JPY 0, EUR and USD 2, BHD 3 (the standard's list one; from memory). */
    @ParameterizedTest
    @CsvSource({"JPY,0.5,3,2", "EUR,0.115,1,0.12", "USD,0.335,3,1.01", "BHD,0.0005,1,0.001", "EUR,0.1149,1,0.11"})
    void roundsHalfUpToTheMinorUnit(String currency, String unitPrice, String quantity, String linePrice) {
        var catalogue = new Shop(currency).accessory("a", unitPrice).catalogue();

        var bill = bill(catalogue, demand("x", "a", quantity, NeedKind.REQUIRED));

        assertThat(bill.required().total()).isEqualTo(new Money(new BigDecimal(linePrice), currency));
    }

    @Test
    void reportsAllFaultsAtOnce() {
        var catalogue = new Shop("EUR")
                .foot("f", "1", need("nowhere", 1, NeedKind.REQUIRED))
                .accessory("a", "1", need("b", 1, NeedKind.REQUIRED))
                .accessory("b", "1", need("f", 1, NeedKind.REQUIRED), need("a", 1, NeedKind.OPTIONAL))
                .accessory("self", "1", need("self", 1, NeedKind.REQUIRED))
                .accessory("self", "1")
                .catalogue();

        assertThatThrownBy(() -> bill(
                        catalogue,
                        demand("x", "a", "1", NeedKind.REQUIRED),
                        demand("y", "ghost", "0", NeedKind.REQUIRED)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::code, Fault::pointer)
                                .containsExactly(
                                        tuple(FaultCode.DUPLICATE_ID, "/inlineCatalogue/accessories/3/id"),
                                        tuple(FaultCode.DANGLING_REFERENCE, "/inlineCatalogue/footKits/0/needs/0/item"),
                                        tuple(FaultCode.CYCLIC_NEEDS, "/inlineCatalogue/accessories/1/needs/1/item"),
                                        tuple(FaultCode.CYCLIC_NEEDS, "/inlineCatalogue/accessories/2/needs/0/item"),
                                        tuple(FaultCode.DANGLING_REFERENCE, "/demands/1/item"),
                                        tuple(FaultCode.OUT_OF_RANGE, "/demands/1/quantity")));
    }

    @Test
    void namesTheWholeCircle() {
        var catalogue = new Shop("EUR")
                .accessory("a", "1", need("b", 1, NeedKind.REQUIRED))
                .accessory("b", "1", need("c", 1, NeedKind.REQUIRED))
                .accessory("c", "1", need("b", 1, NeedKind.REQUIRED))
                .catalogue();

        assertThatThrownBy(() -> bill(catalogue)).hasMessageContaining("b needs c needs b");
    }

    @Test
    void refusesPricesInAnotherCurrencyAndConditionsLeftOut() {
        var eur = new Shop("EUR")
                .accessory("a", "1", need("a2", 1, NeedKind.CONDITIONAL))
                .accessory("a2", "1");
        var base = eur.catalogue();
        var catalogue = Copies.with(Copies.with(base, "currency", "USD"), "remark", null);

        assertThatThrownBy(() -> bill(catalogue))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        invalid -> assertThat(invalid.faults())
                                .extracting(Fault::code)
                                .containsExactly(FaultCode.INCONSISTENT, FaultCode.MISSING, FaultCode.INCONSISTENT));
    }
}
