package io.axiswright.engine.study;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A machine whose feeder is of aluminium, its branch circuits of copper. */
class AluminiumFeederTest {

    private static final SystemStudy STUDY = SystemStudy.with(LayoutEffort.HEURISTIC);
    private static final StudyResult COPPER = STUDY.system(TestCell.request(2));

    private static StudyResult aluminium(boolean cables, boolean marked) {
        StudyRequest cell = TestCell.request(2);
        Design design = cell.design();
        var installation = Copies.with(
                Objects.requireNonNull(design.installation()), "feederMaterial", ConductorMaterial.ALUMINIUM);
        Catalogue catalogue = cell.catalogue();
        List<BulkCable> bulk = Stream.concat(
                        catalogue.bulkCables().stream(),
                        catalogue.bulkCables().stream()
                                .filter(cable -> cables)
                                .map(cable -> Copies.with(cable, "id", "aluminium-" + cable.id()))
                                .map(cable -> Copies.with(cable, "material", ConductorMaterial.ALUMINIUM)))
                .toList();
        var devices = catalogue.protectiveDevices().stream()
                .map(device -> Copies.with(device, "aluminiumTerminals", marked))
                .toList();
        return STUDY.system(new StudyRequest(
                cell.codeBasis(),
                Copies.with(Copies.with(catalogue, "bulkCables", bulk), "protectiveDevices", devices),
                Copies.with(design, "installation", installation)));
    }

    private static CircuitConductors feeder(StudyResult study) {
        return study.conductors().circuits().getFirst();
    }

    private static List<FindingCode> codes(StudyResult study) {
        return study.findings().stream().map(Finding::code).toList();
    }

    @Test
    void onlyTheFeederIsOfIt() {
        var study = aluminium(true, true);
        assertThat(feeder(study).ampacityTable()).contains("aluminium");
        assertThat(study.conductors().circuits().stream().skip(1))
                .noneMatch(circuit -> circuit.ampacityTable().contains("aluminium"));
        assertThat(Objects.requireNonNull(feeder(study).conductor()))
                .isGreaterThan(Objects.requireNonNull(feeder(COPPER).conductor()));
        assertThat(study.billOfMaterials().required().lines())
                .anyMatch(line -> line.item().startsWith("aluminium-power-"));
        assertThat(codes(study))
                .contains(FindingCode.CONDUCTOR_ALUMINIUM)
                .doesNotContain(FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM, FindingCode.STUDY_NO_POWER_CABLE);
    }

    @Test
    void copperCableDoesNotServeForIt() {
        assertThat(codes(aluminium(false, true))).contains(FindingCode.STUDY_NO_POWER_CABLE);
    }

    @Test
    void terminalsNotMarkedForItAreToldOf() {
        var finding = aluminium(true, false).findings().stream()
                .filter(f -> f.code() == FindingCode.CONDUCTOR_TERMINAL_NOT_FOR_ALUMINIUM)
                .toList();
        assertThat(finding).hasSize(1);
        assertThat(finding.getFirst().subject()).isEqualTo("feeder");
    }
}
