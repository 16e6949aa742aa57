package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.ValidatableResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** With the real engine: what a preview tells is what the comparison tells once the design is stored. */
class ComparisonPreviewTest extends HttpTest {

    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");

    private static ObjectNode example(String name) throws Exception {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    private static ObjectNode request(ObjectNode revision) {
        ObjectNode sent = revision.deepCopy();
        sent.remove("message");
        sent.remove("author");
        return sent;
    }

    private ValidatableResponse preview(String project, ObjectNode revision) {
        return given(request(revision))
                .queryParam("from", 1)
                .post("/v1/projects/{id}/comparisons", project)
                .then();
    }

    @Test
    void tellsBeforehandWhatTheComparisonTellsAfterwards() throws Exception {
        String project = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        ObjectNode first = example("addRevision.request.first-state");
        ObjectNode second = example("addRevision.request.heavier-pad-and-faster-stroke");
        String path = "/v1/projects/{id}/revisions";
        given(first).header("If-Match", "*").post(path, project).then().statusCode(201);

        preview(project, first)
                .statusCode(200)
                .body("comparison.changes", empty())
                .body("comparison.consequences", empty());
        var preview = preview(project, second).statusCode(200).body("comparison.consequences", not(empty()));
        given().get(path, project).then().body("items", hasSize(1));

        given(second).header("If-Match", "*").post(path, project).then().statusCode(201);
        var afterwards = given().get("/v1/projects/{id}/comparisons?from=1&to=2", project);
        assertThat(tree(preview.extract().asString()).get("comparison"))
                .isEqualTo(tree(afterwards.asString()).get("comparison"));
    }

    @Test
    void itsPagesTogetherAreTheWhole() throws Exception {
        String project = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        given(example("addRevision.request.first-state"))
                .header("If-Match", "*")
                .post("/v1/projects/{id}/revisions", project);
        ObjectNode second = example("addRevision.request.heavier-pad-and-faster-stroke");
        JsonNode whole = tree(preview(project, second).extract().asString());
        assertThat(whole.has("next")).isFalse();
        int consequences = whole.at("/comparison/consequences").size();

        List<JsonNode> gathered = new ArrayList<>();
        int pages = 0;
        String address = "/v1/projects/" + project + "/comparisons?from=1&limit=20";
        while (!address.isEmpty()) {
            var answer = given(request(second)).urlEncodingEnabled(false).post(address);
            JsonNode page = tree(answer.asString());
            assertThat(page.at("/comparison/counts")).isEqualTo(whole.at("/comparison/counts"));
            gathered.addAll(page.at("/comparison/consequences").values());
            address = page.path("next").asString("");
            assertThat(answer.header("Link").contains("rel=\"next\"")).isEqualTo(!address.isEmpty());
            pages++;
        }
        assertThat(gathered)
                .isEqualTo(List.copyOf(whole.at("/comparison/consequences").values()));
        assertThat(pages).isEqualTo((consequences + 19) / 20).isGreaterThan(1);

        // another body is another comparison
        preview(project, example("addRevision.request.first-state")).body("comparison.consequences", empty());
    }

    @Test
    void refusesWhatHasNoMeaning() throws Exception {
        String project = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        ObjectNode first = example("addRevision.request.first-state");
        preview(project, first).statusCode(404);
        given(first).header("If-Match", "*").post("/v1/projects/{id}/revisions", project);
        ((ObjectNode) first.at("/design/axes/0")).put("stopZone", "nowhere");
        preview(project, first).statusCode(422).body("errors[0].pointer", equalTo("/design/axes/0/stopZone"));
    }

    private static JsonNode tree(String json) {
        return JsonMapper.shared().readTree(json);
    }
}
