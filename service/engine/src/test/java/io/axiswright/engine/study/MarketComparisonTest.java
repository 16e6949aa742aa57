package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.axiswright.engine.Copies;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class MarketComparisonTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);
    private static final StudyRequest HERE = TestCell.request(5);
    private static final OtherMarket SAME = new OtherMarket(CodeBasis.IEC_60204_1, null, null);
    private static final OtherMarket NORTH_AMERICA = new OtherMarket(CodeBasis.NFPA_79, mains(0), null);

    private static Mains mains(double minimumFault) {
        return new Mains(
                SupplySystem.THREE_PHASE_FOUR_WIRE,
                new Voltage(400),
                0.1,
                0.1,
                new Frequency(60),
                new Current(5000),
                minimumFault == 0 ? null : new Current(minimumFault),
                null,
                null,
                null);
    }

    private static MarketComparison compared(OtherMarket other) {
        return Objects.requireNonNull(STUDY.system(HERE, other).otherMarket());
    }

    @Test
    void theStudyHereIsWhatItIsWithoutTheOtherMarket() {
        StudyResult alone = STUDY.system(HERE);
        StudyResult beside = STUDY.system(HERE, NORTH_AMERICA);
        assertThat(alone.otherMarket()).isNull();
        assertThat(beside)
                .usingRecursiveComparison()
                .ignoringFields("otherMarket")
                .isEqualTo(alone);
    }

    @Test
    void theOtherStudyIsThatOfTheDesignWithItsMains() {
        Design d = HERE.design();
        var there = Copies.with(
                Copies.with(d, "mains", mains(0)), "installation", Objects.requireNonNull(d.installation()));
        StudyResult alone = STUDY.system(new StudyRequest(CodeBasis.NFPA_79, HERE.catalogue(), there));
        StudyResult beside = compared(NORTH_AMERICA).study();
        assertThat(beside.codeBasis()).isEqualTo(CodeBasis.NFPA_79);
        assertThat(beside)
                .usingRecursiveComparison()
                .ignoringFieldsMatchingRegexes(".*pointer")
                .isEqualTo(alone);
    }

    @Test
    void whatIsTheSameHasNoDifferences() {
        MarketComparison same = compared(SAME);
        assertThat(same.circuits()).isEmpty();
        assertThat(same.items()).isEmpty();
        assertThat(same.findingsOnlyHere()).isEmpty();
        assertThat(same.findingsOnlyThere()).isEmpty();
    }

    /** Second route: load by load through both studies; a load is named exactly where its circuits are unlike. */
    @Test
    void everyLoadWhoseCircuitDiffersIsNamedWithBothCircuits() {
        StudyResult here = STUDY.system(HERE);
        MarketComparison markets = compared(NORTH_AMERICA);
        int unlike = 0;
        for (BranchCircuit circuit : here.supply().circuits()) {
            for (String load : circuit.loads()) {
                BranchCircuit other = circuit(markets.study(), load);
                CircuitConductors first = conductors(here, circuit);
                CircuitConductors second = conductors(markets.study(), other);
                boolean sameLoads = new HashSet<>(circuit.loads()).equals(new HashSet<>(other.loads()));
                List<CircuitDifference> told = markets.circuits().stream()
                        .filter(d -> d.loads().contains(load))
                        .toList();
                assertThat(told).as(load).hasSize(sameLoads ? 1 : 2);
                if (sameLoads) {
                    CircuitDifference difference = told.getFirst();
                    assertThat(difference.here()).extracting(MarketCircuit::id).isEqualTo(first.id());
                    assertThat(difference.there()).extracting(MarketCircuit::id).isEqualTo(second.id());
                    holds(difference, CircuitAspect.CONDUCTOR, first.conductor(), second.conductor());
                    holds(
                            difference,
                            CircuitAspect.PROTECTIVE_CONDUCTOR,
                            first.protectiveConductor(),
                            second.protectiveConductor());
                    holds(difference, CircuitAspect.VOLTAGE_DROP, first.voltageDrop(), second.voltageDrop());
                    holds(difference, CircuitAspect.CURRENT, circuit.current(), other.current());
                    holds(difference, CircuitAspect.DESIGN_CURRENT, circuit.designCurrent(), other.designCurrent());
                }
                unlike++;
            }
        }
        // metric and AWG sizes are never the same, so no circuit is alike
        assertThat(unlike).isGreaterThanOrEqualTo(5);
        assertThat(markets.circuits().getFirst().loads()).as("the feeder").isEmpty();
        assertThat(markets.circuits()).allSatisfy(d -> assertThat(d.differing()).isNotEmpty());
    }

    private static void holds(
            CircuitDifference difference, CircuitAspect aspect, @Nullable Object here, @Nullable Object there) {
        assertThat(difference.differing().contains(aspect))
                .as("%s of %s", aspect, difference.loads())
                .isEqualTo(!Objects.equals(here, there));
    }

    private static BranchCircuit circuit(StudyResult study, String load) {
        return study.supply().circuits().stream()
                .filter(c -> c.loads().contains(load))
                .findFirst()
                .orElseThrow();
    }

    private static CircuitConductors conductors(StudyResult study, BranchCircuit circuit) {
        return study.conductors().circuits().stream()
                .filter(c -> c.id().equals(circuit.id()))
                .findFirst()
                .orElseThrow();
    }

    /** The catalogue has metric cable only: North America finds none, and does not buy what is bought here. */
    @Test
    void findingsAndItemsOfOneMarketOnlyAreListed() {
        MarketComparison markets = compared(NORTH_AMERICA);
        assertThat(markets.findingsOnlyThere()).extracting(Finding::code).contains(FindingCode.STUDY_NO_POWER_CABLE);
        assertThat(markets.findingsOnlyHere())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.STUDY_NO_POWER_CABLE);
        List<String> cables =
                HERE.catalogue().bulkCables().stream().map(c -> c.id()).toList();
        assertThat(markets.items())
                .filteredOn(item -> cables.contains(item.item()))
                .isNotEmpty()
                .allSatisfy(item -> {
                    assertThat(item.here()).isPositive();
                    assertThat(item.there()).isZero();
                });
    }

    @Test
    void theOtherWayRoundTheDifferencesAreTurned() {
        MarketComparison there = compared(new OtherMarket(CodeBasis.NFPA_79, null, null));
        var request = new StudyRequest(CodeBasis.NFPA_79, HERE.catalogue(), HERE.design());
        MarketComparison back =
                Objects.requireNonNull(STUDY.system(request, SAME).otherMarket());
        assertThat(texts(back.findingsOnlyHere())).isEqualTo(texts(there.findingsOnlyThere()));
        assertThat(texts(back.findingsOnlyThere())).isEqualTo(texts(there.findingsOnlyHere()));
        assertThat(back.circuits())
                .extracting(d -> new CircuitDifference(d.loads(), d.there(), d.here(), d.differing()))
                .containsExactlyInAnyOrderElementsOf(there.circuits());
        assertThat(back.items())
                .extracting(i -> new ItemDifference(i.item(), i.there(), i.here(), i.unit()))
                .containsExactlyInAnyOrderElementsOf(there.items());
    }

    private static List<String> texts(List<Finding> findings) {
        return findings.stream().map(Finding::text).toList();
    }

    @Test
    void whatComesFromTheOtherMainsPointsAtThem() {
        List<Finding> findings = compared(NORTH_AMERICA).study().findings();
        assertThat(findings).extracting(Finding::pointer).noneMatch(p -> p.startsWith("/design/mains"));
        assertThat(findings).extracting(Finding::pointer).anyMatch(p -> p.startsWith("/otherMarket/mains"));
        assertThat(findings).extracting(Finding::pointer).doesNotContain("/codeBasis");
        assertThat(compared(NORTH_AMERICA).study().supply().findings())
                .extracting(Finding::pointer)
                .noneMatch(p -> p.startsWith("/design/mains"));
        assertThat(compared(new OtherMarket(CodeBasis.NFPA_79, null, null))
                        .study()
                        .findings())
                .extracting(Finding::pointer)
                .noneMatch(p -> p.startsWith("/otherMarket/mains"));
    }

    @Test
    void aFaultInTheOtherMainsIsToldThere() {
        var senseless = new OtherMarket(CodeBasis.NFPA_79, mains(6000), null);
        assertThatThrownBy(() -> STUDY.system(HERE, senseless))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .isNotEmpty()
                                .allMatch(p -> p.startsWith("/otherMarket/mains")));
    }
}
