package io.axiswright.engine.bill;

import static io.axiswright.engine.bill.Shop.demand;
import static io.axiswright.engine.bill.Shop.need;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.NeedKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A bill that has been tampered with must not close. */
class ClosingAuditTest {

    private static final BillRequest REQUEST = new BillRequest(
            new Shop("EUR")
                    .accessory("drive", "100", need("plug", 2, NeedKind.REQUIRED), need("foot", 1, NeedKind.OPTIONAL))
                    .accessory("plug", "5")
                    .accessory("foot", "7")
                    .catalogue(),
            CatalogueSource.SENT,
            List.of(demand("a", "drive", "1", NeedKind.REQUIRED), demand("b", "drive", "3", NeedKind.REQUIRED)));

    private static final List<BillLine> LINES =
            BillMakingTest.lines(new BillMaking().make(REQUEST)).toList();

    private static BillLine with(BillLine line, String quantity, List<LineDemand> demands) {
        return new BillLine(
                line.id(),
                line.item(),
                line.kind(),
                line.description(),
                line.demanded(),
                new BigDecimal(quantity),
                new BigDecimal(quantity),
                line.unit(),
                line.unitCode(),
                line.unitPrice(),
                line.linePrice(),
                line.sale(),
                line.mass(),
                line.leadTime(),
                demands);
    }

    private static ClosingCheck audit(BillLine changed) {
        return ClosingAudit.of(
                REQUEST,
                LINES.stream()
                        .map(l -> l.id().equals(changed.id()) ? changed : l)
                        .toList(),
                Map.of());
    }

    private static BillLine plug() {
        return LINES.stream().filter(l -> l.item().equals("plug")).findFirst().orElseThrow();
    }

    @Test
    void theUntouchedBillCloses() {
        assertThat(ClosingAudit.of(REQUEST, LINES, Map.of()))
                .isEqualTo(new ClosingCheck(2, 2, 4, 4, 3, 3, 3, 0, 0, List.of()));
    }

    @Test
    void aLineLeftOutLeavesItsNeedsUnmet() {
        var check = ClosingAudit.of(
                REQUEST, LINES.stream().filter(l -> !l.item().equals("plug")).toList(), Map.of());

        assertThat(check.needsMet()).isEqualTo(2);
        assertThat(check.gaps()).hasSize(2).allSatisfy(gap -> assertThat(gap).contains("required:plug"));
    }

    @Test
    void aDemandLeftOutIsSeen() {
        var check = ClosingAudit.of(
                REQUEST, LINES.stream().filter(l -> !l.item().equals("drive")).toList(), Map.of());

        assertThat(check.demandsMet()).isZero();
        assertThat(check.closes()).isFalse();
    }

    @Test
    void aQuantityThatIsNotTheSumIsSeen() {
        assertThat(audit(with(plug(), "7", plug().demands())).linesBalanced()).isEqualTo(2);
    }

    @Test
    void aReasonNobodyHasIsSeen() {
        var demands = new ArrayList<>(plug().demands());
        demands.add(new LineDemand(0, "a", BigDecimal.ZERO, "invented", "/design/a", "required:drive"));

        var check = audit(with(plug(), "8", demands));

        assertThat(check.linesDemanded()).isEqualTo(2);
        assertThat(check.gaps()).singleElement().asString().contains("invented");
    }

    @Test
    void aLineNobodyAsksForIsSeen() {
        assertThat(audit(with(plug(), "8", List.of())).gaps()).contains("nobody asks for line required:plug");
    }

    /** Two pieces on one reel: a list that forgets one, cuts one twice or has a reel too short does not close. */
    @Test
    void aCutListMustCutEveryPieceOnceFromReelsThatHoldThem() {
        var request = new BillRequest(
                new Shop("EUR").reeled("cable", "1", 50, 0.5).catalogue(),
                CatalogueSource.SENT,
                List.of(demand("a", "cable", "30", NeedKind.REQUIRED), demand("b", "cable", "19", NeedKind.REQUIRED)));
        var bill = new BillMaking().make(request);
        CutList cuts = bill.cutLists().getFirst();
        CutPiece first = cuts.reels().getFirst().pieces().getFirst();
        CutPiece second = cuts.reels().getFirst().pieces().getLast();

        assertThat(closes(request, bill, cuts, List.of(first, second))).isTrue();
        assertThat(closes(request, bill, cuts, List.of(first))).isFalse();
        assertThat(closes(request, bill, cuts, List.of(first, second, second))).isFalse();
        assertThat(closes(request, bill, cuts, List.of(first, first))).isFalse();
    }

    private static boolean closes(BillRequest request, BillResult bill, CutList cuts, List<CutPiece> pieces) {
        var changed = new CutList(
                cuts.line(),
                cuts.item(),
                cuts.reelLength(),
                cuts.cutAllowance(),
                List.of(new CutReel(pieces, cuts.reels().getFirst().left())),
                cuts.fewestReels(),
                cuts.proven(),
                cuts.waste(),
                cuts.longerThanReel());
        return ClosingAudit.of(request, bill.required().lines(), Map.of(cuts.line(), changed))
                .closes();
    }
}
