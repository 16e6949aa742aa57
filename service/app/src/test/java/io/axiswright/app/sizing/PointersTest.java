package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.sizing.Damages.Damaged;
import io.axiswright.app.support.Pointers;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CatalogueCheck;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.ConductorSizing;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Every pointer leads to something in the body that was sent, whatever is wrong with it. */
class PointersTest {

    private final SystemStudy study = SystemStudy.with(LayoutEffort.HEURISTIC);
    private final List<String> lost = new ArrayList<>();
    private final Set<FindingCode> seen = EnumSet.noneOf(FindingCode.class);
    private int faults;

    @Test
    void everyPointerLeadsIntoTheRequest() {
        Damages.of("IEC_60204_1").forEach(this::withItsCatalogue);
        assertThat(lost).isEmpty();
        assertThat(faults).as("faults met").isGreaterThan(20);
        assertThat(seen).as("findings met").hasSizeGreaterThan(45);
    }

    @Test
    void everyPointerLeadsIntoARequestThatNamesAStoredCatalogue() {
        Damages.of("NFPA_79").forEach(this::withAStoredCatalogue);
        assertThat(lost).isEmpty();
        assertThat(seen).as("findings met").hasSizeGreaterThan(40);
    }

    @Test
    @Tag("slow")
    void everyPointerLeadsIntoTheRequestWhateverIsScaled() {
        Damages.scaled("IEC_60204_1").forEach(this::withItsCatalogue);
        Damages.scaled("NFPA_79").forEach(this::withItsCatalogue);
        assertThat(lost).isEmpty();
        assertThat(seen).as("findings met").hasSizeGreaterThan(30);
    }

    @Test
    void circuitsOfTheirOwnArePointedAtInTheirOwnRequest() {
        Map.of("ambient", 80, "groupedCircuits", 100, "designCurrent", 4000, "deviceRating", 1, "voltage", 24)
                .forEach((member, value) -> {
                    ObjectNode body = circuits();
                    ObjectNode circuit = (ObjectNode) body.at("/circuits/0");
                    if (circuit.get(member) instanceof ObjectNode quantity) {
                        quantity.put("value", value);
                    } else {
                        circuit.put(member, value);
                    }
                    var result = new ConductorSizing().size(RecordReader.read(body, ConductorRequest.class));
                    result.findings().forEach(finding -> check(new Damaged(member, body), finding));
                });
        assertThat(lost).isEmpty();
        assertThat(seen).as("findings met").hasSizeGreaterThan(4);
    }

    private static ObjectNode circuits() {
        return (ObjectNode) JsonMapper.shared().readTree("""
                {"codeBasis": "IEC_60204_1", "circuits": [{
                  "id": "C1", "kind": "AC_THREE_PHASE", "use": "POWER", "loadKind": "GENERAL",
                  "designCurrent": {"value": 10, "unit": "A"}, "voltage": {"value": 400, "unit": "V"},
                  "length": {"value": 20, "unit": "m"}, "powerFactor": 1, "method": "B2", "insulation": "PVC_70",
                  "material": "COPPER", "ambient": {"value": 40, "unit": "Cel"}, "groupedCircuits": 1,
                  "terminationRating": {"value": 75, "unit": "Cel"}, "voltageDropLimit": 0.05, "device": "BREAKER",
                  "deviceRating": {"value": 16, "unit": "A"}}]}
                """);
    }

    private void withItsCatalogue(Damaged damaged) {
        try {
            var request = RecordReader.read(damaged.body(), SizingRequest.class);
            Catalogue catalogue = Objects.requireNonNull(request.inlineCatalogue());
            List<Fault> inCatalogue = CatalogueCheck.faults(catalogue, "/inlineCatalogue");
            if (!inCatalogue.isEmpty()) {
                throw new InvalidDesign(inCatalogue);
            }
            study(damaged, new StudyRequest(request.codeBasis(), catalogue, request.design(), CatalogueSource.SENT));
        } catch (InvalidDesign e) {
            check(damaged, e);
        }
    }

    private void withAStoredCatalogue(Damaged damaged) {
        ObjectNode body = damaged.body().deepCopy();
        body.remove("inlineCatalogue");
        body.putObject("catalogue").put("name", "damaged").put("version", 1);
        Catalogue catalogue;
        try {
            catalogue = RecordReader.read(damaged.body().get("inlineCatalogue"), Catalogue.class);
        } catch (InvalidDesign _) {
            return; // nobody can have stored it
        }
        if (!CatalogueCheck.faults(catalogue, "").isEmpty()) {
            return;
        }
        var named = new Damaged(damaged.what(), body);
        try {
            var request = RecordReader.read(body, SizingRequest.class);
            study(named, new StudyRequest(request.codeBasis(), catalogue, request.design(), CatalogueSource.STORED));
        } catch (InvalidDesign e) {
            check(named, e);
        }
    }

    private void study(Damaged damaged, StudyRequest request) {
        StudyResult result = study.system(request);
        result.findings().forEach(finding -> check(damaged, finding));
        result.billOfMaterials().required().lines().stream()
                .flatMap(line -> line.demands().stream())
                .filter(demand -> !Pointers.leadsToSomething(damaged.body(), demand.pointer()))
                .forEach(demand -> lost.add(damaged.what() + ": " + demand));
    }

    private void check(Damaged damaged, Finding finding) {
        seen.add(finding.code());
        if (!Pointers.leadsToSomething(damaged.body(), finding.pointer())) {
            lost.add(damaged.what() + ": " + finding.code() + " at " + finding.pointer());
        }
    }

    private void check(Damaged damaged, InvalidDesign refused) {
        for (Fault fault : refused.faults()) {
            faults++;
            if (!Pointers.leadsToAPlace(
                    damaged.body(), fault.pointer(), fault.code().name())) {
                lost.add(damaged.what() + ": " + fault);
            }
        }
    }
}
