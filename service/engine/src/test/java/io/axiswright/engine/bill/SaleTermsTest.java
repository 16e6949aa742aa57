package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.catalogue.PriceBreak;
import io.axiswright.engine.catalogue.SaleTerms;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Packs, minimum orders, price breaks, masses and lead times; each expected number is worked out beside it. */
class SaleTermsTest {

    private static final double DAY = 86_400;

    private static Money eur(String amount) {
        return new Money(new BigDecimal(amount), "EUR");
    }

    private static SaleTerms terms(
            String item, @Nullable Integer pack, @Nullable Integer minimumOrder, PriceBreak... breaks) {
        return new SaleTerms(item, pack, minimumOrder, List.of(breaks), null, null);
    }

    private static BillResult bill(Shop shop, Demand... demands) {
        return new BillMaking().make(new BillRequest(shop.catalogue(), CatalogueSource.SENT, List.of(demands)));
    }

    private static BillLine only(BillResult bill) {
        assertThat(bill.required().lines()).hasSize(1);
        return bill.required().lines().getFirst();
    }

    /**
     * Packs of 25, no order below 60, 0.40 each, 0.31 from 100 and 0.255 from 200. 7: the minimum of 60 takes 3 packs = 75 at
     * 0.40 = 30.00. 76: 4 packs = 100 reach the first break, 31.00, which 75 at 30.00 just do not. 188: 8 packs = 200 at
     * 0.255 = 51.00. 201: 9 packs = 225 at 0.255 = 57.375, half up 57.38.
     */
    @ParameterizedTest
    @CsvSource({"7,75,0.40,30.00", "75,75,0.40,30.00", "76,100,0.31,31.00", "188,200,0.255,51.00", "201,225,0.255,57.38"
    })
    void ordersWholePacksAtThePriceOfTheBreakReached(
            String needed, String ordered, String unitPrice, String linePrice) {
        var shop = new Shop("EUR")
                .accessory("bolt", "0.40")
                .terms(terms("bolt", 25, 60, new PriceBreak(100, eur("0.31")), new PriceBreak(200, eur("0.255"))));

        var line = only(bill(shop, demand("a", "bolt", needed, NeedKind.REQUIRED)));

        assertThat(line.quantity()).isEqualByComparingTo(needed);
        assertThat(line.orderQuantity()).isEqualByComparingTo(ordered);
        assertThat(line.unitPrice()).isEqualTo(eur(unitPrice));
        assertThat(line.linePrice()).isEqualTo(eur(linePrice));
    }

    /** 30 required and 4 conditional bolts are 34, so one pack of 50 is enough: 46 and 4, both at the break from 50. */
    /**
     * 28.00 each, 20.00 from 10, 19.00 from 12: 8 cost 224.00, more than 10 at 200.00; 12 at 228.00 are not cheaper. 7 cost 196.00, less
     * than either. In packs of 4 the 10 become 12 at 19.00 = 228.00, which is more than 8 at 224.00.
     */
    @Test
    void aLargerOrderThatCostsLessIsRemarked() {
        var ten = new PriceBreak(10, eur("20.00"));
        var twelve = new PriceBreak(12, eur("19.00"));
        assertThat(remarked("8", terms("hub", null, null, ten, twelve)))
                .extracting(Finding::value, Finding::limit, Finding::pointer)
                .containsExactly(tuple(new Ratio(8), new Ratio(10), "/inlineCatalogue/saleTerms/0"));
        assertThat(remarked("7", terms("hub", null, null, ten, twelve))).isEmpty();
        assertThat(remarked("8", terms("hub", 4, null, ten, twelve))).isEmpty();
        assertThat(remarked("12", terms("hub", null, null, ten, twelve))).isEmpty();
    }

    private static List<Finding> remarked(String needed, SaleTerms terms) {
        Shop shop = new Shop("EUR").accessory("hub", "28.00").terms(terms);
        return bill(shop, demand("axis", "hub", needed, NeedKind.REQUIRED)).findings().stream()
                .filter(f -> f.code() == FindingCode.BILL_LARGER_ORDER_CHEAPER)
                .toList();
    }

    /** 150 m at 2.00 are 300.00; from 190 m on 1.40: 200 m, four reels, are 280.00. */
    @Test
    void aLargerOrderOfCableIsOfWholeReels() {
        Shop shop = new Shop("EUR")
                .reeled("cable", "2.00", 50, 0)
                .terms(terms("cable", null, null, new PriceBreak(190, eur("1.40"))));
        assertThat(bill(
                                shop,
                                demand("a", "cable", "50", NeedKind.REQUIRED),
                                demand("b", "cable", "50", NeedKind.REQUIRED),
                                demand("c", "cable", "45", NeedKind.REQUIRED))
                        .findings())
                .extracting(Finding::code, Finding::value, Finding::limit)
                .containsExactly(tuple(FindingCode.BILL_LARGER_ORDER_CHEAPER, new Ratio(150), new Ratio(200)));
    }

    @Test
    void requiredAndConditionalLinesOfAnItemAreOneOrder() {
        var shop = new Shop("EUR")
                .accessory(
                        "drive",
                        "0",
                        need("bolt", 30, NeedKind.REQUIRED),
                        need("bolt", 4, DemandCondition.FOOT_MOUNTED))
                .accessory("bolt", "1.00")
                .terms(terms("bolt", 50, null, new PriceBreak(50, eur("0.80"))));

        var bill = bill(shop, demand("a", "drive", "1", NeedKind.REQUIRED, DemandCondition.FOOT_MOUNTED));

        assertThat(bill.required().lines())
                .filteredOn(line -> line.item().equals("bolt"))
                .extracting(BillLine::id, BillLine::quantity, BillLine::orderQuantity, BillLine::linePrice)
                .containsExactly(
                        tuple("required:bolt", new BigDecimal(30), new BigDecimal(46), eur("36.80")),
                        tuple("conditional:bolt", new BigDecimal(4), new BigDecimal(4), eur("3.20")));
        assertThat(bill.required().total()).isEqualTo(eur("40.00"));
        assertThat(bill.closing().closes()).isTrue();
        assertThat(bill.derivations()).singleElement().satisfies(d -> {
            assertThat(d.subject()).isEqualTo("required:bolt");
            assertThat(d.result().si()).isEqualTo(46);
        });
    }

    /** What is optional may not be bought, so it brings no other line to its break or pack; what is free is not ordered. */
    @Test
    void otherSectionsAreOrdersOfTheirOwn() {
        var shop = new Shop("EUR").accessory("bolt", "1.00").terms(terms("bolt", 50, null));

        var bill = bill(
                shop,
                demand("a", "bolt", "30", NeedKind.REQUIRED),
                demand("b", "bolt", "3", NeedKind.OPTIONAL),
                demand("c", "bolt", "5", NeedKind.NO_CHARGE),
                demand("d", "bolt", "7", NeedKind.CUSTOMER_SUPPLIED));

        assertThat(BillMakingTest.lines(bill))
                .extracting(BillLine::orderQuantity)
                .map(BigDecimal::intValueExact)
                .containsExactly(50, 50, 7, 5);
    }

    /** 7.5 m of cable, sold from 10 m on: 10 m at 2.00; 12.5 m is cut as needed. */
    @Test
    void aMinimumOrderHoldsForMetresToo() {
        var shop = new Shop("EUR").cable("cable", "2.00").terms(terms("cable", null, 10));

        assertThat(only(bill(shop, demand("a", "cable", "7.5", NeedKind.REQUIRED)))
                        .linePrice())
                .isEqualTo(eur("20.00"));
        assertThat(only(bill(shop, demand("a", "cable", "12.5", NeedKind.REQUIRED)))
                        .linePrice())
                .isEqualTo(eur("25.00"));
    }

    /** 3 drives of 4.2 kg and a pack of 10 labels of 5 g: 12.6 + 0.05 kg; the plug's mass is unknown. */
    @Test
    void massesAreThoseOfWhatIsOrdered() {
        var shop = new Shop("EUR")
                .accessory("drive", "1", need("label", 1, NeedKind.REQUIRED), need("plug", 1, NeedKind.REQUIRED))
                .accessory("label", "1")
                .accessory("plug", "1")
                .terms(new SaleTerms("drive", null, null, null, new Mass(4.2), null))
                .terms(new SaleTerms("label", 10, null, null, new Mass(0.005), null));

        var required = bill(shop, demand("a", "drive", "3", NeedKind.REQUIRED)).required();

        assertThat(required.mass().si()).isEqualTo(12.65);
        assertThat(required.linesWithoutMass()).isEqualTo(1);
    }

    /** Nine of 1.9 kg are 17.1 kg; in binary 9 · 1.9 is 17.099999999999998, and 0.1 + 0.2 is 0.30000000000000004. */
    @Test
    void massesAddUpAsOnPaper() {
        var shop = new Shop("EUR").accessory("drive", "1").accessory("a", "1").accessory("b", "1");
        shop.terms(new SaleTerms("drive", null, null, null, new Mass(1.9), null))
                .terms(new SaleTerms("a", null, null, null, new Mass(0.1), null))
                .terms(new SaleTerms("b", null, null, null, new Mass(0.2), null));

        var drives = bill(shop, demand("x", "drive", "9", NeedKind.REQUIRED)).required();
        var parts = bill(shop, demand("x", "a", "1", NeedKind.REQUIRED), demand("x", "b", "1", NeedKind.REQUIRED))
                .required();

        assertThat(drives.lines().getFirst().mass()).isEqualTo(new Mass(17.1));
        assertThat(drives.mass()).isEqualTo(new Mass(17.1));
        assertThat(parts.mass()).isEqualTo(new Mass(0.3));
    }

    /** The brake takes longest of what is required, the optional tool does not count, one line is unknown. */
    @Test
    void theLongestLeadTimeOfWhatIsRequiredIsThatOfTheWhole() {
        var shop = new Shop("EUR")
                .accessory(
                        "drive",
                        "1",
                        need("brake", 1, DemandCondition.HOLDING_BRAKE),
                        need("tool", 1, NeedKind.OPTIONAL),
                        need("plug", 1, NeedKind.REQUIRED))
                .accessory("brake", "1")
                .accessory("tool", "1")
                .accessory("plug", "1")
                .terms(new SaleTerms("drive", null, null, null, null, new Time(20 * DAY)))
                .terms(new SaleTerms("brake", null, null, null, null, new Time(35 * DAY)))
                .terms(new SaleTerms("tool", null, null, null, null, new Time(90 * DAY)));

        assertThat(bill(shop, demand("a", "drive", "1", NeedKind.REQUIRED, DemandCondition.HOLDING_BRAKE))
                        .leadTime())
                .isEqualTo(new LeadTime(new Time(35 * DAY), "brake", 1));
        assertThat(bill(shop, demand("a", "plug", "1", NeedKind.REQUIRED)).leadTime())
                .isNull();
    }

    /** Generated terms with falling prices: never short, whole packs and no more than must be, and more is never dearer each. */
    @Test
    void ordersAreNeverShortAndMoreIsNeverDearerByTheUnit() {
        var random = new SplittableRandom(20);
        for (int trial = 0; trial < 300; trial++) {
            int pack = random.nextInt(1, 30);
            int least = random.nextInt(1, 100);
            var breaks = new ArrayList<PriceBreak>();
            int cents = 1000;
            for (int from = random.nextInt(2, 40); breaks.size() < 4; from += random.nextInt(1, 60)) {
                cents -= random.nextInt(0, 200);
                breaks.add(new PriceBreak(from, new Money(BigDecimal.valueOf(cents, 2), "EUR")));
            }
            var shop = new Shop("EUR")
                    .accessory("a", "10.00")
                    .terms(terms("a", pack, least, breaks.toArray(PriceBreak[]::new)));
            BigDecimal before = new BigDecimal("10.00");
            for (int needed = 1; needed < 200; needed += random.nextInt(1, 20)) {
                var line = only(bill(shop, demand("x", "a", Integer.toString(needed), NeedKind.REQUIRED)));
                int ordered = line.orderQuantity().intValueExact();
                assertThat(ordered).isGreaterThanOrEqualTo(Math.max(needed, least));
                assertThat(ordered % pack).isZero();
                assertThat(ordered - pack).isLessThan(Math.max(needed, least));
                var each = java.util.Objects.requireNonNull(line.unitPrice()).amount();
                assertThat(each).isLessThanOrEqualTo(before);
                assertThat(java.util.Objects.requireNonNull(line.linePrice()).amount())
                        .isEqualByComparingTo(each.multiply(BigDecimal.valueOf(ordered)));
                before = each;
            }
        }
    }

    @Test
    void termsThatContradictTheirItemsOrThemselvesAreFaults() {
        var catalogue = new Shop("EUR")
                .cable("cable", "1")
                .accessory("a", "1")
                .accessory("on-request", null)
                .terms(terms("ghost", null, null))
                .terms(terms("cable", 50, null))
                .terms(terms("on-request", null, null, new PriceBreak(10, eur("1"))))
                .terms(terms(
                        "a",
                        null,
                        null,
                        new PriceBreak(10, eur("1")),
                        new PriceBreak(10, new Money(BigDecimal.ONE, "USD"))))
                .terms(terms("a", 2, null))
                .catalogue();

        assertThat(CatalogueCheck.faults(catalogue, "/inlineCatalogue"))
                .extracting(Fault::code, Fault::pointer)
                .containsExactly(
                        tuple(FaultCode.DANGLING_REFERENCE, "/inlineCatalogue/saleTerms/0/item"),
                        tuple(FaultCode.INCONSISTENT, "/inlineCatalogue/saleTerms/1/pack"),
                        tuple(FaultCode.INCONSISTENT, "/inlineCatalogue/saleTerms/2/priceBreaks"),
                        tuple(FaultCode.INCONSISTENT, "/inlineCatalogue/saleTerms/3/priceBreaks/1/price/currency"),
                        tuple(FaultCode.INCONSISTENT, "/inlineCatalogue/saleTerms/3/priceBreaks/1/from"),
                        tuple(FaultCode.INCONSISTENT, "/inlineCatalogue/saleTerms/4/item"));
    }

    /** Reels of 100 m: an order of at least 300 m is three of them, one of at least 250 m is none. */
    @Test
    void theMinimumOrderOfCableOnReelsIsOnWholeReels() {
        var shop = new Shop("EUR").reeled("three", "1.00", 100, 0).reeled("none", "1.00", 100, 0);
        var catalogue = shop.terms(terms("three", null, 300))
                .terms(terms("none", null, 250))
                .catalogue();
        assertThat(CatalogueCheck.faults(catalogue, ""))
                .extracting(Fault::pointer)
                .containsExactly("/saleTerms/1/minimumOrder");
    }
}
