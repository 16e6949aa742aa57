package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.ApiDocument.Operation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The examples of the sizing endpoints: sent, answered, and answered as stored. */
class SizingExamplesTest extends ApiSpecTest {

    @Test
    void everySizingEndpointSizesTheLabelApplicator() {
        List<String> sizing = document()
                .operations()
                .filter(operation -> operation.bodySchema().equals("SizingRequest"))
                .filter(operation -> operation.path().startsWith("/v1/sizing/"))
                .map(Operation::id)
                .toList();
        assertThat(sizing).hasSize(10);
        for (String operation : sizing) {
            var request = withExample("SizingRequest.request.label-applicator");
            expect(send(operation, request), operation, 200, "label-applicator");
        }
    }

    @Test
    void dutyTakesCustomaryUnitsAndACatalogueSentAlong() {
        String name = "one-axis-in-customary-units";
        expect(send("sizeDuty", withExample("sizeDuty.request." + name)), "sizeDuty", 200, name);
    }

    @Test
    void dutyTakesEveryKindOfSegment() {
        String name = "every-kind-of-segment";
        expect(send("sizeDuty", withExample("sizeDuty.request." + name)), "sizeDuty", 200, name);
    }

    @Test
    void dutyWorksOutReservesAndTheLifeOfAShaftBearing() {
        String name = "reserves-and-shaft";
        var answer = expect(send("sizeDuty", withExample("sizeDuty.request." + name)), "sizeDuty", 200, name);
        assertThat(answer.jsonPath().getString("axes[0].reserves.cycleRate.verdict"))
                .isEqualTo("BOUND");
        assertThat(answer.jsonPath().getDouble("axes[0].shaft.bearingLife.value"))
                .isPositive();
    }

    @Test
    void brakingDrawsTheBusOverTimeOfAnAxisWithANamedGearUnit() {
        String name = "bus-voltage-over-time";
        var answer = expect(send("sizeBraking", withExample("sizeBraking.request." + name)), "sizeBraking", 200, name);
        assertThat(answer.jsonPath().getList("groups[0].cases[0].course.points"))
                .isNotEmpty();
    }

    @Test
    void aLayoutThatIsThereStaysWhereItIs() {
        String name = "layout-that-is-there";
        var answer =
                expect(send("sizeTopology", withExample("sizeTopology.request." + name)), "sizeTopology", 200, name);
        assertThat(answer.jsonPath().getList("changes.kind", String.class))
                .containsExactlyInAnyOrder("AXIS_ADDED", "AXIS_REMOVED");
    }

    @Test
    void aDutyNoDriveUnitHoldsIsAnsweredWithAViolation() {
        String name = "move-too-fast";
        var answer = expect(send("sizeDuty", withExample("sizeDuty.request." + name)), "sizeDuty", 200, name);
        assertThat(answer.jsonPath().getList("findings.severity", String.class)).contains("VIOLATION");
    }

    @Test
    void aMachineForTwoMarketsIsAnsweredForBoth() {
        String name = "two-markets";
        var answer = expect(send("sizeSystem", withExample("sizeSystem.request." + name)), "sizeSystem", 200, name);
        assertThat(answer.jsonPath().getString("otherMarket.study.codeBasis")).isEqualTo("NFPA_79");
        assertThat(answer.jsonPath().getList("otherMarket.circuits.differing")).isNotEmpty();
    }

    @Test
    void conductorsNeedNoDesign() {
        String name = "one-branch";
        expect(send("sizeConductors", withExample("sizeConductors.request." + name)), "sizeConductors", 200, name);
    }

    @Test
    void faultsAreAnsweredWithTheirPlaces() {
        refused("sizeDuty", "wrong-unit-and-misspelt-member");
        refused("sizeDuty", "moves-that-contradict-themselves");
        refused("sizeSystem", "twice-the-same-id");
        refused("storeCatalogue", "need-without-item");
    }

    private void refused(String operation, String name) {
        var request = withExample(operation + ".refused." + name);
        var answer = expect(send(operation, request), operation, 422, name);
        assertThat(answer.jsonPath().getList("errors.pointer", String.class))
                .isNotEmpty()
                .allMatch(pointer -> pointer.startsWith("/"));
    }

    @Test
    void aBodyThatIsNotJsonIsAnsweredWithItsPlace() {
        var request = given().contentType("application/json").body("{\"codeBasis\": \"NFPA_79\",\n \"design\": oops}");
        expect(send("sizeSystem", request), "sizeSystem", 400, "not-json");
    }

    @Test
    void theDemonstrationIsSizedAsTheDocumentSays() {
        var demo = expect(send("getDemoRequest", given()), "getDemoRequest", 200, "pane-packing-cell");

        var request = given().contentType("application/json").body(demo.asString());
        assertThat(send("sizeSystem", request).statusCode()).isEqualTo(200);
    }
}
