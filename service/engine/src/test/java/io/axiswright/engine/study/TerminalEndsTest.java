package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.catalogue.TerminalRange;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.Limit;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Conductors of a study and the terminals of the items they go to; three drive units on one circuit of 1.5 mm². */
class TerminalEndsTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);

    private static TerminalRange range(@Nullable String smallest, @Nullable String largest) {
        return new TerminalRange(
                smallest == null ? null : ConductorSize.metric(smallest),
                largest == null ? null : ConductorSize.metric(largest));
    }

    private static StudyRequest request(@Nullable TerminalRange ofUnits, @Nullable TerminalRange ofDevices) {
        StudyRequest cell = TestCell.request(3);
        var catalogue = Copies.with(
                cell.catalogue(),
                "driveUnits",
                cell.catalogue().driveUnits().stream()
                        .map(unit -> Copies.with(unit, "inputTerminals", ofUnits))
                        .toList());
        return new StudyRequest(
                cell.codeBasis(),
                Copies.with(
                        catalogue,
                        "protectiveDevices",
                        catalogue.protectiveDevices().stream()
                                .map(device -> Copies.with(device, "terminals", ofDevices))
                                .toList()),
                cell.design());
    }

    private static CircuitConductors drives(StudyResult study) {
        String id = study.supply().circuits().stream()
                .filter(circuit -> circuit.loads().contains("axis-0"))
                .findFirst()
                .orElseThrow()
                .id();
        return study.conductors().circuits().stream()
                .filter(circuit -> circuit.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<Finding> misfits(StudyResult study) {
        return study.findings().stream()
                .filter(f -> f.code() == FindingCode.STUDY_TERMINAL_MISFIT)
                .toList();
    }

    /** Without ranges the current alone decides; units that hold nothing below 4 mm² get it, the rest of the machine does not. */
    @Test
    void terminalsThatHoldNothingThinRaiseTheSize() {
        var free = STUDY.system(request(null, null));
        assertThat(Objects.requireNonNull(drives(free).conductor())).isLessThan(ConductorSize.metric("4"));
        var study = STUDY.system(request(range("4", null), null));
        assertThat(drives(study).conductor()).isEqualTo(ConductorSize.metric("4"));
        assertThat(drives(study).decidingLimit()).isEqualTo(Limit.TERMINAL_RANGE);
        assertThat(study.conductors().circuits())
                .filteredOn(circuit ->
                        circuit.conductor() != null && circuit.conductor().equals(ConductorSize.metric("4")))
                .hasSize(1);
    }

    /** The end that asks for more decides: devices from 6 mm² on, units from 4 mm² on. */
    @Test
    void theEndThatAsksForMoreDecides() {
        assertThat(drives(STUDY.system(request(range("4", null), range("6", null))))
                        .conductor())
                .isEqualTo(ConductorSize.metric("6"));
    }

    /** Units that take up to 1 mm², devices from 1.5 mm² on: nothing fits both, and that is told, not refused. */
    @Test
    void whatDoesNotGoInIsTold() {
        var study = STUDY.system(request(range(null, "1"), range("1.5", null)));
        assertThat(misfits(study))
                .hasSize(3)
                .extracting(Finding::pointer)
                .containsExactlyInAnyOrder("/design/axes/0", "/design/axes/0", "/design/axes/0");
        assertThat(misfits(study)).extracting(Finding::subject).anyMatch(subject -> subject.startsWith("axis-2"));
        assertThat(misfits(STUDY.system(request(range(null, "10"), range("1.5", "10")))))
                .isEmpty();
    }

    /** The conductors of the cable are what must go in, even where thinner ones would do: here the catalogue has 10 mm² and more. */
    @Test
    void theCableCountsNotWhatWouldDo() {
        StudyRequest request = request(range(null, "6"), null);
        var thick = request.catalogue().bulkCables().stream()
                .filter(cable -> cable.size().compareTo(ConductorSize.metric("10")) >= 0)
                .toList();
        var study = STUDY.system(new StudyRequest(
                request.codeBasis(), Copies.with(request.catalogue(), "bulkCables", thick), request.design()));
        assertThat(misfits(study))
                .hasSize(3)
                .allSatisfy(f -> assertThat(f.text()).contains("10 mm2", "6 mm2"));
    }

    @Test
    void aRangeThatEndsBelowItsBeginningIsAFault() {
        assertThat(CatalogueCheck.faults(
                        request(range("4", "2.5"), range("4", "4")).catalogue(), ""))
                .extracting(Fault::pointer)
                .containsExactly("/driveUnits/0/inputTerminals/largest", "/driveUnits/1/inputTerminals/largest");
        assertThat(CatalogueCheck.faults(request(null, range("4", "1")).catalogue(), ""))
                .isNotEmpty()
                .allMatch(fault -> fault.pointer().endsWith("/terminals/largest"));
    }
}
