package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.sizing.Damages.Damaged;
import io.axiswright.app.wire.RecordReader;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import io.axiswright.engine.topology.LayoutEffort;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The order in which a request lists axes, places, items … changes nothing in the answer but the order of the lists that follow it. */
class OrderOfListsTest {

    private static final SystemStudy PROVING = SystemStudy.proving();
    private static final SystemStudy QUICK = SystemStudy.with(LayoutEffort.HEURISTIC);

    @ParameterizedTest
    @ValueSource(strings = {"IEC_60204_1", "NFPA_79"})
    void theDemonstrationIsTheSameInAnyOrder(String basis) {
        holds(PROVING, demonstration(basis));
    }

    @ParameterizedTest
    @ValueSource(strings = {"IEC_60204_1", "NFPA_79"})
    void soIsWhateverIsDoneToIt(String basis) {
        for (Damaged damaged : Damages.of(basis)) {
            ObjectNode body = damaged.body();
            ObjectNode other = Reordering.shuffled(body, 1);
            assertThat(said(QUICK, other)).as(damaged.what()).isEqualTo(said(QUICK, body));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {12, 24, 45})
    void soIsAMachineOfEqualParts(int axes) {
        ObjectNode body = CellRow.of(demonstration("IEC_60204_1"), axes);
        // much too little to prove anything
        ((ObjectNode) body.at("/design/network"))
                .putObject("searchLimit")
                .put("value", 0.1)
                .put("unit", "s");
        holds(PROVING, body);
    }

    private static void holds(SystemStudy study, ObjectNode body) {
        JsonNode said = said(study, body);
        assertThat(said.at("/billOfMaterials/required/lines").size()).isPositive();
        assertThat(said(study, Reordering.reversed(body))).isEqualTo(said);
        for (long seed = 1; seed <= 2; seed++) {
            assertThat(said(study, Reordering.shuffled(body, seed)))
                    .as("shuffled by %d", seed)
                    .isEqualTo(said);
        }
    }

    private static ObjectNode demonstration(String basis) {
        return Damages.of(basis).getFirst().body();
    }

    /** The answer to a request, or its faults, in the same words whatever the order of the request. */
    private static JsonNode said(SystemStudy study, ObjectNode body) {
        var unordered = new Unordered(body);
        try {
            SizingRequest request = RecordReader.read(body, SizingRequest.class);
            StudyResult result = study.system(new StudyRequest(
                    request.codeBasis(),
                    Objects.requireNonNull(request.inlineCatalogue()),
                    request.design(),
                    CatalogueSource.SENT));
            return unordered.answer(JsonMapper.shared().readTree(RecordWriter.write(result)));
        } catch (InvalidDesign e) {
            return faults(e, unordered);
        }
    }

    private static JsonNode faults(InvalidDesign refused, Unordered unordered) {
        List<String> told = refused.faults().stream()
                .map(fault -> fault.code() + " at " + place(fault, unordered))
                .sorted()
                .toList();
        return JsonMapper.shared().valueToTree(told);
    }

    /** Of two of one id, the one that comes later is at fault. */
    private static String place(Fault fault, Unordered unordered) {
        return unordered.place(
                fault.code() == FaultCode.DUPLICATE_ID
                        ? fault.pointer().replaceFirst("/\\d+/id$", "")
                        : fault.pointer());
    }
}
