package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Cable bought by whole reels, by hand. */
class ReelsTest {

    private static BillResult bill(double reel, double allowance, String... lengths) {
        var demands = new ArrayList<Demand>();
        for (String length : lengths) {
            demands.add(demand("axis-" + demands.size(), "cable", length, NeedKind.REQUIRED));
        }
        return new BillMaking()
                .make(new BillRequest(
                        new Shop("EUR").reeled("cable", "2.00", reel, allowance).catalogue(),
                        CatalogueSource.SENT,
                        demands));
    }

    private static List<List<String>> plan(CutList cuts) {
        return cuts.reels().stream()
                .map(r -> r.pieces().stream().map(CutPiece::asker).toList())
                .toList();
    }

    /**
     * 44, 6 and 5 m twice on reels of 56 m, 0.2 m a cut: 2 · 55 m + 6 · 0.2 m = 111.2 m take at least two reels, and 44 + 6 + 5 +
     * 3 · 0.2 = 55.6 m go on each, which leaves 0.4 m; 2 · 56 - 110 = 2 m are waste.
     */
    @Test
    void theLineBuysWholeReelsAndTheListSaysWhatIsCutFromEach() {
        BillResult bill = bill(56, 0.2, "44", "6", "5", "44", "6", "5");
        CutList cuts = bill.cutLists().getFirst();
        BillLine line = bill.required().lines().getFirst();

        assertThat(plan(cuts))
                .containsExactlyInAnyOrder(
                        List.of("axis-0", "axis-1", "axis-2"), List.of("axis-3", "axis-4", "axis-5"));
        assertThat(cuts.reels()).allSatisfy(r -> assertThat(r.left().si()).isCloseTo(0.4, Offset.offset(1e-9)));
        assertThat(cuts.line()).isEqualTo(line.id());
        assertThat(cuts.fewestReels()).isEqualTo(2);
        assertThat(cuts.proven()).isTrue();
        assertThat(cuts.waste().si()).isCloseTo(2, Offset.offset(1e-9));
        assertThat(line.demanded()).isEqualByComparingTo("110");
        assertThat(line.quantity()).isEqualByComparingTo("112");
        assertThat(line.linePrice()).isEqualTo(new Money(new BigDecimal("224.00"), "EUR"));
        assertThat(bill.closing().closes()).isTrue();
        assertThat(bill.findings()).isEmpty();
    }

    /**
     * 30 m required and 20 m that a condition asks for come from one reel of 56 m: 30 + 20 + 2 · 0.2 = 50.4 m. The required line has the
     * reel less those 20 m, 36 m at 2.00 = 72.00, the other its 20 m for 40.00: 112.00, one reel.
     */
    @Test
    void requiredAndConditionalPiecesComeFromTheSameReels() {
        Shop shop = new Shop("EUR")
                .reeled("cable", "2.00", 56, 0.2)
                .accessory("drive", "1.00", Shop.need("cable", 20, DemandCondition.HOLDING_BRAKE));
        BillResult bill = new BillMaking()
                .make(new BillRequest(
                        shop.catalogue(),
                        CatalogueSource.SENT,
                        List.of(
                                demand("axis", "cable", "30", NeedKind.REQUIRED),
                                demand("axis", "drive", "1", NeedKind.REQUIRED, DemandCondition.HOLDING_BRAKE))));
        CutList cuts = bill.cutLists().getFirst();
        assertThat(bill.cutLists()).hasSize(1);
        assertThat(cuts.line()).isEqualTo("required:cable");
        assertThat(cuts.reels()).hasSize(1);
        assertThat(cuts.waste().si()).isCloseTo(6, Offset.offset(1e-9));
        assertThat(bill.required().lines())
                .filteredOn(line -> line.item().equals("cable"))
                .extracting(BillLine::id, line -> line.quantity().intValueExact(), line -> line.linePrice())
                .containsExactly(
                        tuple("required:cable", 36, new Money(new BigDecimal("72.00"), "EUR")),
                        tuple("conditional:cable", 20, new Money(new BigDecimal("40.00"), "EUR")));
        assertThat(bill.closing().gaps()).isEmpty();
        assertThat(bill.closing().linesBalanced()).isEqualTo(bill.closing().lines());
    }

    /** Without the allowance 28 m go twice on a reel of 56 m, with any allowance once: the next whole centimetre counts. */
    @Test
    void theAllowanceCanCostAReel() {
        assertThat(bill(56, 0, "28", "28").cutLists().getFirst().reels()).hasSize(1);
        assertThat(bill(56, 0.001, "28", "28").cutLists().getFirst().reels()).hasSize(2);
    }

    /** 60 m come from no reel of 50 m: they are on the bill beside one reel for the 40 m, 60 + 50 = 110 m, and told. */
    @Test
    void aPieceLongerThanAReelIsTold() {
        BillResult bill = bill(50, 0.5, "60", "40");
        CutList cuts = bill.cutLists().getFirst();

        assertThat(plan(cuts)).containsExactly(List.of("axis-1"));
        assertThat(cuts.longerThanReel()).extracting(CutPiece::asker).containsExactly("axis-0");
        assertThat(bill.required().lines().getFirst().quantity()).isEqualByComparingTo("110");
        assertThat(bill.closing().closes()).isTrue();
        Finding finding = bill.findings().getFirst();
        assertThat(finding.code()).isEqualTo(FindingCode.BILL_PIECE_LONGER_THAN_REEL);
        assertThat(finding.pointer()).isEqualTo("/inlineCatalogue/bulkCables/0");
        assertThat(finding.value()).isEqualTo(new Length(60.5));
        assertThat(finding.limit()).isEqualTo(new Length(50));
    }

    @Test
    void aPieceLongerThanEveryReelLeavesNoReel() {
        BillResult bill = bill(50, 0, "60");
        assertThat(bill.cutLists().getFirst().reels()).isEmpty();
        assertThat(bill.cutLists().getFirst().proven()).isTrue();
        assertThat(bill.required().lines().getFirst().quantity()).isEqualByComparingTo("60");
    }
}
