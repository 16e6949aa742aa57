package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.nio.ByteBuffer;
import java.util.Base64;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The examples of catalogues and projects tell one story each, from storing to comparing. */
class ProjectExamplesTest extends ApiSpecTest {

    private static final String UNKNOWN = "00000000-0000-7000-8000-000000000000";

    @Test
    void aCatalogueIsStoredOnceAndServedForEver() {
        String file = "Catalogue.request.bench-list";
        var stored = expect(send("storeCatalogue", withExample(file)), "storeCatalogue", 201, "bench-list");
        expectHeaders(stored, "storeCatalogue");
        var again = expect(send("storeCatalogue", withExample(file)), "storeCatalogue", 200, "bench-list");
        expectHeaders(again, "storeCatalogue");

        expect(send("getCatalogue", given(), "bench list"), "getCatalogue", 200, "bench-list");
        // the demonstration's catalogue is stored before anybody can ask
        var list = send("listCatalogues", given().queryParam("limit", 1));
        expectHeaders(expect(list, "listCatalogues", 200, "first-page"), "listCatalogues");

        var version = send("getCatalogueVersion", given(), "bench list", 1);
        expectHeaders(expect(version, "getCatalogueVersion", 200, "bench-list"), "getCatalogueVersion");
        var held = given().header("If-None-Match", version.header("ETag"));
        unchanged(send("getCatalogueVersion", held, "bench list", 1), "getCatalogueVersion");

        expect(send("getCatalogue", given(), "nobody's list"), "getCatalogue", 404, "unknown-catalogue");
        expect(send("listCatalogues", given().queryParam("limit", 1000)), "listCatalogues", 400, "page-too-long");
    }

    @Test
    void aProjectIsOpenedRevisedAndCompared() {
        var opened = send("openProject", withExample("openProject.request.label-applicator"));
        expectHeaders(expect(opened, "openProject", 201, "label-applicator"), "openProject");
        String id = opened.path("id");
        var sister = send("openProject", withExample("openProject.request.label-applicator-left-hand"));
        expect(sister, "openProject", 201, "label-applicator-left-hand");
        var list = send(
                "listProjects",
                given().queryParam(
                                "cursor",
                                before(
                                        id,
                                        send("listProjects", given().queryParam("limit", 1))
                                                .path("next"))));
        expectHeaders(expect(list, "listProjects", 200, "two-projects"), "listProjects");

        var first = withExample("addRevision.request.first-state").header("If-Match", opened.header("ETag"));
        var added = expect(send("addRevision", first, id), "addRevision", 201, "first-state");
        expectHeaders(added, "addRevision");
        refused(id, opened.header("ETag"));
        String change = "heavier-pad-and-faster-stroke";
        var second = withExample("addRevision.request." + change).header("If-Match", added.header("ETag"));
        expect(send("addRevision", second, id), "addRevision", 201, change);

        look(id);
        var compared = given().queryParam("from", 1).queryParam("to", 2);
        expect(send("compareRevisions", compared, id), "compareRevisions", 200, change);
    }

    private void refused(String id, String stale) {
        var unguarded = withExample("addRevision.request.heavier-pad-and-faster-stroke");
        expect(send("addRevision", unguarded, id), "addRevision", 428, "no-if-match");
        var late =
                withExample("addRevision.request.heavier-pad-and-faster-stroke").header("If-Match", stale);
        var answer = expect(send("addRevision", late, id), "addRevision", 412, "changed-in-between");
        expectHeaders(answer, "addRevision");
    }

    private void look(String id) {
        var project = expect(send("getProject", given(), id), "getProject", 200, "label-applicator");
        expectHeaders(project, "getProject");
        unchanged(send("getProject", given().header("If-None-Match", project.header("ETag")), id), "getProject");
        expect(send("listRevisions", given(), id), "listRevisions", 200, "label-applicator");
        var revision = expect(send("getRevision", given(), id, 1), "getRevision", 200, "first-state");
        expectHeaders(revision, "getRevision");
        JsonNode study = JsonMapper.shared().readTree("{\"$ref\": \"#/components/schemas/StudyResult\"}");
        JsonNode result = JsonMapper.shared().readTree(revision.asString()).get("result");
        assertThat(document().faults(study, result)).isEmpty();
        unchanged(send("getRevision", given().header("If-None-Match", revision.header("ETag")), id, 1), "getRevision");
        var overview = expect(send("getRevisionOverview", given(), id, 1), "getRevisionOverview", 200, "first-state");
        expectHeaders(overview, "getRevisionOverview");
        var bill = expect(send("getRevisionBill", given(), id, 1), "getRevisionBill", 200, "first-state");
        expectHeaders(bill, "getRevisionBill");
        expect(send("getProject", given(), UNKNOWN), "getProject", 404, "unknown-project");
        expect(send("getProject", given(), "label-applicator"), "getProject", 400, "not-a-key");
        expect(send("getRevision", given(), id, 3), "getRevision", 404, "unknown-revision");
        expect(
                send("compareRevisions", given().queryParam("from", 1), id),
                "compareRevisions",
                400,
                "second-revision-missing");
    }

    @Test
    void findingsAndProblemsDescribeThemselves() {
        expectStart(send("listFindings", given()), "listFindings", 200, "beginning");
        expect(send("describeFinding", given(), "CONTROL-VOLTAGE-LOW"), "describeFinding", 200, "voltage-low");
        expect(send("describeFinding", given(), "NO-SUCH-CODE"), "describeFinding", 404, "unknown-finding");
        expect(send("listProblemKinds", given()), "listProblemKinds", 200, "all");
        expect(send("describeProblemKind", given(), "invalid-design"), "describeProblemKind", 200, "invalid-design");
    }

    private void unchanged(Response answer, String operation) {
        assertThat(answer.statusCode()).isEqualTo(304);
        assertThat(answer.asString()).isEmpty();
        expectHeaders(answer, operation);
    }

    /** Keys rise, so this cursor of the list stands right before; all but its key is that of another one. */
    private static String before(String id, String next) {
        UUID key = UUID.fromString(id);
        byte[] cursor = Base64.getUrlDecoder().decode(next.substring(next.indexOf("cursor=") + "cursor=".length()));
        ByteBuffer.wrap(cursor).putLong(key.getMostSignificantBits()).putLong(key.getLeastSignificantBits() - 1);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(cursor);
    }
}
