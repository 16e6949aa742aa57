package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.axiswright.app.support.ApiDocument.Operation;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

/** The examples of branches, patches, labels, restoring, previews, drift and batches: one story more. */
class VariantExamplesTest extends ApiSpecTest {

    private String id = "";
    private String head = "";

    private void openWithOneRevision() {
        id = send("openProject", withExample("openProject.request.label-applicator"))
                .path("id");
        var first = withExample("addRevision.request.first-state").header("If-Match", "*");
        head = send("addRevision", first, id).then().statusCode(201).extract().header("ETag");
    }

    private Response sound(Response answer, String operation, int status, String name) {
        expectHeaders(expect(answer, operation, status, name), operation);
        return answer;
    }

    @Test
    void aVariantIsMadeByPatches() {
        openWithOneRevision();
        var made = send("makeBranch", withExample("makeBranch.request.left-hand"), id);
        sound(made, "makeBranch", 201, "left-hand");
        sound(send("listBranches", given(), id), "listBranches", 200, "main-and-left-hand");

        Operation patch = document().operation("patchHead");
        for (var form : patch.content().at("/requestBody/content").properties()) {
            JsonNode body = form.getValue().at("/examples/other-code/value");
            var patched = given().contentType(form.getKey())
                    .body(body.toString())
                    .header(
                            "If-Match",
                            send("getBranch", given(), id, "left-hand").header("ETag"))
                    .patch(patch.path(), id, "left-hand");
            if (form.getKey().contains("merge")) {
                sound(patched, "patchHead", 201, "other-code");
            } else {
                // the branch follows the other code already
                assertThat(patched.statusCode()).isEqualTo(409);
            }
        }
        var branch = sound(send("getBranch", given(), id, "left-hand"), "getBranch", 200, "left-hand");
        var latest = sound(send("getHead", given(), id, "left-hand"), "getHead", 200, "left-hand");
        assertThat(latest.header("ETag")).isEqualTo(branch.header("ETag"));
        var removal = given().header("If-Match", branch.header("ETag"));
        assertThat(send("removeBranch", removal, id, "left-hand").statusCode()).isEqualTo(204);
    }

    @Test
    void aRevisionIsQuotedAndRestored() {
        openWithOneRevision();
        expect(send("putLabel", withExample("putLabel.request.quoted"), id, 1, "quoted"), "putLabel", 200, "quoted");
        expect(send("takeLabel", given(), id, 1, "quoted"), "takeLabel", 200, "no-longer-quoted");
        var restored = withExample("restoreRevision.request.first-state").header("If-Match", head);
        sound(send("restoreRevision", restored, id), "restoreRevision", 201, "first-state");
    }

    @Test
    void aDesignIsComparedWithoutStoringIt() {
        openWithOneRevision();
        var sent = withExample("SizingRequest.request.label-applicator").queryParam("from", 1);
        expect(send("previewComparison", sent, id), "previewComparison", 200, "label-applicator");
    }

    @Test
    void nothingDriftsUnderTheEngineThatMadeIt() {
        openWithOneRevision();
        var drift = sound(send("getDrift", given(), id, 1), "getDrift", 200, "nothing-moved");
        assertThat(drift.jsonPath().getList("moved")).isEmpty();
        assertThat(drift.jsonPath().getInt("compared")).isGreaterThan(500);
    }

    @Test
    void aBatchIsAnsweredItemByItem() {
        String name = "a-system-and-a-fault";
        var request = withExample("sizeSystems.request." + name).urlEncodingEnabled(false);
        var answer = expect(send("sizeSystems", request), "sizeSystems", 200, name);
        assertThat(answer.jsonPath().getList("items.status", Integer.class)).containsExactly(200, 422);
    }

    @Test
    void aHistoryIsImported() {
        String project = send("openProject", withExample("openProject.request.label-applicator"))
                .path("id");
        var history =
                withExample("importRevisions.request.from-a-calculation-sheet").header("If-Match", "*");
        sound(send("importRevisions", history, project), "importRevisions", 201, "from-a-calculation-sheet");
    }

    @Test
    void revisionsAreAddedByABatch() {
        openWithOneRevision();
        // keys and tags of an example are not those of this run
        String body = SpecFiles.request("addRevisions.request.other-code-and-a-stale-change")
                .replace("01980000-0000-7000-8000-000000000001", id)
                .replace("00000000000000000000000000000001", head.replace("\"", ""));
        var request = given().contentType("application/json").body(body).urlEncodingEnabled(false);
        expect(send("addRevisions", request), "addRevisions", 200, "other-code-and-a-stale-change")
                .then()
                .body("items.status", equalTo(List.of(201, 412)));
    }
}
