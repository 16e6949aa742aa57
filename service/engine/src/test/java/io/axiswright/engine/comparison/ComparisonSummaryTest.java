package io.axiswright.engine.comparison;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.bill.BillSection;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Severity;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.study.TestCell;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SearchGate;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.topology.TopologyResult;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

@org.jspecify.annotations.NullUnmarked
class ComparisonSummaryTest {

    private static final StudyRequest BASE = TestCell.request(12);
    private static final StudyResult RESULT = SystemStudy.proving().system(BASE);
    private static final ChangeCounts NONE = new ChangeCounts(0, 0, 0);

    private static StudyRequest heavier(String axis, double kilograms) {
        List<Step> way = List.of(
                new Step.Member("design"),
                new Step.Member("axes"),
                new Step.Element(axis, 0),
                new Step.Member("mechanism"),
                new Step.Member("load"));
        return Patch.putIn(BASE, new Difference(way, ChangeKind.CHANGED, null, new Mass(kilograms)));
    }

    /** One axis takes the large unit for the small one; the independent route counts what two studies of our own ask to buy. */
    @Test
    void aLargerDriveUnitIsALineMoreAndOneThatChanged() {
        StudyRequest after = heavier("axis-2", 170);
        Map<String, BigDecimal> bought = quantities(RESULT);
        Map<String, BigDecimal> then = quantities(SystemStudy.proving().system(after));
        assertThat(then).containsKey("required:unit-large");
        assertThat(bought).doesNotContainKey("required:unit-large").containsKey("required:unit-small");
        var more = new HashSet<>(then.keySet());
        more.removeAll(bought.keySet());
        var fewer = new HashSet<>(bought.keySet());
        fewer.removeAll(then.keySet());
        long others = bought.keySet().stream()
                .filter(line -> then.containsKey(line) && !then.get(line).equals(bought.get(line)))
                .count();

        ComparisonResult result = new Comparison(new SearchGate(1)).compare(new ComparisonRequest(BASE, after, 10));
        ComparisonSummary summary = result.summary();
        assertThat(summary.bill().lines()).isEqualTo(new ChangeCounts(more.size(), fewer.size(), (int) others));
        assertThat(new BigDecimal(summary.bill().totalDifference().amount()))
                .isEqualByComparingTo(summary.bill()
                        .totalAfter()
                        .amount()
                        .subtract(summary.bill().totalBefore().amount()))
                .isPositive();
        assertThat(summary.network().gateways()).isEqualTo(NONE);
        assertThat(summary.network().movedAxes()).isEmpty();
        assertThat(summary.consequences())
                .isEqualTo(new ChangeCounts(
                        count(result, ChangeKind.ADDED),
                        count(result, ChangeKind.REMOVED),
                        count(result, ChangeKind.CHANGED)));
        assertThat(result.counts().values().stream().mapToInt(Integer::intValue).sum())
                .isEqualTo(result.consequences().size());
    }

    private static Map<String, BigDecimal> quantities(StudyResult result) {
        return result.billOfMaterials().required().lines().stream()
                .collect(Collectors.toMap(BillLine::id, BillLine::quantity));
    }

    private static int count(ComparisonResult result, ChangeKind kind) {
        return (int)
                result.consequences().stream().filter(c -> c.kind() == kind).count();
    }

    private static FindingChanges findings(List<Finding> before, List<Finding> after) {
        return FindingChanges.of(FindingDifferences.between(before, after));
    }

    @Test
    void findingsAreCountedByHowMuchTheyMatter() {
        Finding caution = Copies.with(RESULT.findings().getFirst(), "severity", Severity.CAUTION);
        Finding violation = Copies.with(caution, "severity", Severity.VIOLATION);
        Finding note = Copies.with(Copies.with(caution, "severity", Severity.NOTE), "subject", "something else");
        Finding reworded = Copies.with(caution, "text", "Other words.");
        assertThat(findings(List.of(), List.of(violation, note)))
                .isEqualTo(new FindingChanges(new ChangeCounts(1, 0, 0), NONE, new ChangeCounts(1, 0, 0)));
        assertThat(findings(List.of(caution, note), List.of(reworded)))
                .isEqualTo(new FindingChanges(NONE, new ChangeCounts(0, 0, 1), new ChangeCounts(0, 1, 0)));
        // graver than it was: no caution any more, but a violation
        assertThat(findings(List.of(caution), List.of(violation)))
                .isEqualTo(new FindingChanges(new ChangeCounts(1, 0, 0), new ChangeCounts(0, 1, 0), NONE));
    }

    @Test
    void aMovedAxisAndAnotherCableAreSeen() {
        TopologyResult layout = RESULT.topology();
        assertThat(layout.gateways()).hasSizeGreaterThan(1);
        PlacedGateway first = layout.gateways().getFirst();
        PlacedGateway second = layout.gateways().get(1);
        SpurLink moved = first.spurs().getFirst();
        SpurLink recabled = Copies.with(second.spurs().getFirst(), "cable", "another");
        List<SpurLink> spurs = new ArrayList<>(second.spurs());
        spurs.set(0, recabled);
        spurs.add(moved);
        PlacedGateway fewer = Copies.with(
                first, "spurs", first.spurs().subList(1, first.spurs().size()));
        PlacedGateway more = Copies.with(second, "spurs", List.copyOf(spurs));
        List<PlacedGateway> gateways = new ArrayList<>(layout.gateways());
        gateways.set(0, fewer);
        gateways.set(1, more);
        TopologyResult other = Copies.with(
                Copies.with(layout, "gateways", List.copyOf(gateways)), "cost", new Money(BigDecimal.ONE, "USD"));
        assertThat(NetworkChanges.of(layout, other))
                .isEqualTo(new NetworkChanges(NONE, List.of(moved.axis()), 1, null));
        assertThat(NetworkChanges.of(layout, layout))
                .returns(NONE, NetworkChanges::gateways)
                .returns(0, NetworkChanges::otherCables)
                .extracting(changes -> new BigDecimal(changes.costDifference().amount()).signum())
                .isEqualTo(0);

        gateways.set(1, Copies.with(second, "place", "elsewhere"));
        gateways.removeFirst();
        assertThat(NetworkChanges.of(layout, Copies.with(layout, "gateways", List.copyOf(gateways)))
                        .gateways())
                .isEqualTo(new ChangeCounts(0, 1, 1));
    }

    /** Who asked for it is no matter of what is bought. */
    @Test
    void aLineHasChangedIfItsQuantityOrPriceHas() {
        BillSection section = RESULT.billOfMaterials().required();
        var lines = new ArrayList<>(section.lines());
        lines.set(0, Copies.with(lines.getFirst(), "demands", List.of()));
        assertThat(BillChanges.of(section, Copies.with(section, "lines", List.copyOf(lines)))
                        .lines())
                .isEqualTo(NONE);
        lines.set(0, Copies.with(lines.getFirst(), "orderQuantity", new BigDecimal("99")));
        assertThat(BillChanges.of(section, Copies.with(section, "lines", List.copyOf(lines)))
                        .lines())
                .isEqualTo(new ChangeCounts(0, 0, 1));
    }
}
