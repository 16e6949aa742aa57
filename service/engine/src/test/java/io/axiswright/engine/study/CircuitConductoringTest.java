package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.bill.BillLine;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What supply and conductors of one study say to each other. */
class CircuitConductoringTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static StudyRequest request(CodeBasis basis, Insulation insulation) {
        StudyRequest cell = TestCell.request(6);
        Design d = cell.design();
        Installation i = Objects.requireNonNull(d.installation());
        var installation = new Installation(
                i.mainsPanel(),
                i.feederLength(),
                i.method(),
                insulation,
                i.material(),
                i.ambient(),
                i.groupedCircuits(),
                i.terminationRating(),
                i.voltageDropLimit(),
                i.device());
        return new StudyRequest(basis, cell.catalogue(), Copies.with(d, "installation", installation));
    }

    /** What the catalogue states of a drive unit's inrush reaches its circuit: six units of 40 A on one. */
    @Test
    void theInrushOfDriveUnitsCounts() {
        StudyRequest cell = TestCell.request(6);
        var units = cell.catalogue().driveUnits().stream()
                .map(unit -> Copies.with(unit, "inputInrush", new Current(40)))
                .toList();
        var supply = STUDY.system(new StudyRequest(
                        cell.codeBasis(), Copies.with(cell.catalogue(), "driveUnits", units), cell.design()))
                .supply();
        assertThat(supply.circuits().getFirst().loads()).hasSize(6);
        assertThat(Objects.requireNonNull(supply.circuits().getFirst().inrush())
                        .peak()
                        .si())
                .isEqualTo(240);
    }

    /** One cable for both markets: the study says, once and at the installation, what it took it for. */
    @Test
    void insulationIsReadInTheOtherCodesTerms() {
        List<Finding> findings =
                STUDY.conductors(request(CodeBasis.NFPA_79, Insulation.PVC_70)).findings();
        assertThat(findings.stream().filter(f -> f.code() == FindingCode.CONDUCTOR_INSULATION_ASSUMED))
                .singleElement()
                .satisfies(f -> assertThat(f.pointer()).isEqualTo("/design/installation/insulation"))
                .satisfies(f -> assertThat(f.text()).contains("PVC_70 is read as NEC_60"));
        assertThat(STUDY.conductors(request(CodeBasis.IEC_60204_1, Insulation.PVC_70))
                        .findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.CONDUCTOR_INSULATION_ASSUMED);
    }

    @Test
    void sixtyDegreesHaveNoColumnUnderIec() {
        assertThatThrownBy(() -> STUDY.conductors(request(CodeBasis.IEC_60204_1, Insulation.NEC_60)))
                .isInstanceOfSatisfying(
                        InvalidDesign.class,
                        e -> assertThat(e.faults())
                                .extracting(Fault::pointer)
                                .containsExactly("/design/installation/insulation"));
    }

    /** Feeder and branch circuits are one request, and the supply has told of the mains. */
    @ParameterizedTest
    @EnumSource(CodeBasis.class)
    void nothingIsSaidTwice(CodeBasis basis) {
        List<Finding> findings =
                STUDY.system(request(basis, Insulation.PVC_70)).conductors().findings();
        assertThat(findings)
                .extracting(Finding::code)
                .filteredOn(code -> code.name().startsWith("CONDUCTOR_"))
                .isNotEmpty()
                .doesNotHaveDuplicates();
        assertThat(findings).extracting(Finding::code).doesNotContain(FindingCode.CONDUCTOR_HAZARDOUS_VOLTAGE);
    }

    /**
     * Six drive units on one circuit leak 6 · 2 = 12 mA, more than 10 mA: IEC 60204-1 8.2.6 asks for 10 mm² or a second
     * protective conductor. Cables of 10 mm² are bought for the drive units and the
     * feeder though thinner lines would carry the current; the control supply, which leaks nothing, keeps its thin one.
     */
    @Test
    void aCableHasAProtectiveCoreThickEnoughForTheLeakage() {
        StudyRequest request = request(CodeBasis.IEC_60204_1, Insulation.PVC_70);
        StudyResult leaking = STUDY.system(request);
        assertThat(leaking.supply().circuits().getFirst().leakageCurrent().si()).isEqualTo(0.012);
        assertThat(leaking.conductors().circuits())
                .extracting(CircuitConductors::conductor)
                .allMatch(size -> size.area().si() < 9e-6);
        assertThat(leaking.billOfMaterials().required().lines())
                .extracting(BillLine::item)
                .filteredOn(item -> item.startsWith("power-"))
                .containsExactlyInAnyOrder("power-3x1.5", "power-4x10", "power-5x10");
        assertThat(leaking.conductors().findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.STUDY_PROTECTIVE_CORE_THIN);
    }

    /** The same with cables of 6 mm² at most. */
    @Test
    void aProtectiveCoreTooThinForTheLeakageIsTold() {
        StudyRequest request = request(CodeBasis.IEC_60204_1, Insulation.PVC_70);
        StudyResult leaking = STUDY.system(
                new StudyRequest(request.codeBasis(), withoutThickCables(request.catalogue()), request.design()));
        assertThat(leaking.conductors().findings())
                .filteredOn(f -> f.code() == FindingCode.STUDY_PROTECTIVE_CORE_THIN)
                .extracting(Finding::subject)
                .containsExactly("feeder", "C1");
    }

    private static Catalogue withoutThickCables(Catalogue c) {
        return Copies.with(
                c,
                "bulkCables",
                c.bulkCables().stream()
                        .filter(cable -> cable.size().area().si() < 7e-6)
                        .toList());
    }

    /** What the supply says conductors must carry by 430.24 is what the conductors carry. */
    @Test
    void supplyAndConductorsFollowOneRule() {
        StudyResult system = STUDY.system(request(CodeBasis.NFPA_79, Insulation.NEC_75));
        ConductorResult conductors = system.conductors();
        List<BranchCircuit> shared = system.supply().circuits().stream()
                .filter(c -> c.use() == LoadUse.DRIVE && c.loads().size() > 1)
                .toList();
        assertThat(shared).isNotEmpty();
        for (BranchCircuit circuit : shared) {
            assertThat(conductors.derivations())
                    .filteredOn(
                            d -> d.subject().equals(circuit.id()) && d.symbol().equals("Id"))
                    .singleElement()
                    .satisfies(d -> assertThat(d.result().si())
                            .isCloseTo(circuit.designCurrent().si(), within(1e-9)));
        }
        for (CircuitConductors circuit : conductors.circuits()) {
            assertThat(circuit.conductor()).as(circuit.id()).isNotNull();
        }
    }
}
