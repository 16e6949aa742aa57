package io.axiswright.app.apispec;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What is not stored: catalogues that contradict themselves, revisions on a state that is not. */
class RefusedStoringTest extends RefusalTest {

    @Test
    void cataloguesThatContradictThemselves() {
        ObjectNode body = catalogue();
        var needs = (ArrayNode) body.at("/driveUnits/0/needs");
        ObjectNode need = needs.addObject().put("item", "nowhere");
        need.put("quantity", 1).put("kind", "REQUIRED").put("reason", "for the test");
        fault(given(body).post("/v1/catalogues"), "DANGLING_REFERENCE", "/driveUnits/0/needs/0/item");
        need.put("item", body.at("/driveUnits/0/id").asString());
        problem(given(body).post("/v1/catalogues"), 422, "INVALID_DESIGN").body("errors.code", hasItem("CYCLIC_NEEDS"));
        ObjectNode sentAlong = sizing();
        sentAlong.remove("catalogue");
        sentAlong.set("inlineCatalogue", body);
        problem(system(sentAlong), 422, "INVALID_DESIGN")
                .body("errors.pointer", hasItem(startsWith("/inlineCatalogue/driveUnits/0")));
        fault(given(catalogue().put("currency", "XXL")).post("/v1/catalogues"), "UNKNOWN_VALUE", "/currency");
    }

    @Test
    void revisionsOnAStateThatIsNot() {
        ObjectNode revision = example("addRevision.request.first-state");
        String id = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        countRows();
        String path = "/v1/projects/" + id + "/revisions";
        problem(given(revision).post(path), 428, "PRECONDITION_REQUIRED")
                .body("errors.header", equalTo(List.of("If-Match")));
        for (String stale : List.of("\"stale\"", "W/\"stale\"")) {
            problem(given(revision).header("If-Match", stale).post(path), 412, "PRECONDITION_FAILED");
        }
        for (String noTag : List.of("stale", "", "\"")) {
            problem(given(revision).header("If-Match", noTag).post(path), 400, "INVALID_PARAMETER")
                    .body("errors.header", equalTo(List.of("If-Match")));
        }
        problem(
                given(revision).header("If-Match", "*").post("/v1/projects/" + UUID.randomUUID() + "/revisions"),
                404,
                "NOT_FOUND");
        at(revision, "/design/axes/0").put("stopZone", "nowhere");
        fault(given(revision).header("If-Match", "*").post(path), "DANGLING_REFERENCE", "/design/axes/0/stopZone");
    }
}
