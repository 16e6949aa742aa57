package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** With the real engine: a comparison in pages, over two versions of a catalogue, and over two engines. */
class ComparisonPagesTest extends HttpTest {

    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");
    private static final int LIMIT = 7;

    @Autowired
    private JdbcClient database;

    private String project = "";

    @BeforeEach
    void open() throws Exception {
        var named = JsonMapper.shared().createObjectNode().put("name", name("compared"));
        project = given(named).post("/v1/projects").path("id");
    }

    private static ObjectNode example(String name) throws Exception {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    private static ObjectNode first() throws Exception {
        return example("addRevision.request.first-state");
    }

    private void add(ObjectNode revision) {
        given(revision)
                .header("If-Match", "*")
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(201);
    }

    private Response compare(String query) {
        return given().get("/v1/projects/" + project + "/comparisons?from=1&to=2" + query);
    }

    private static JsonNode tree(Response answer) {
        return JsonMapper.shared().readTree(answer.asString());
    }

    private static List<JsonNode> consequences(JsonNode answer) {
        return List.copyOf(answer.at("/comparison/consequences").values());
    }

    @Test
    void itsPagesTogetherAreTheWhole() throws Exception {
        add(first());
        add(example("addRevision.request.heavier-pad-and-faster-stroke"));
        JsonNode whole = tree(compare(""));
        assertThat(whole.has("next")).isFalse();
        assertThat(consequences(whole)).hasSizeGreaterThan(3 * LIMIT);

        List<JsonNode> gathered = new ArrayList<>();
        Response answer = compare("&limit=" + LIMIT);
        while (true) {
            JsonNode page = tree(answer);
            assertThat(page.at("/comparison/counts")).isEqualTo(whole.at("/comparison/counts"));
            assertThat(page.at("/comparison/changes")).isEqualTo(whole.at("/comparison/changes"));
            assertThat(page.at("/comparison/summary")).isEqualTo(whole.at("/comparison/summary"));
            gathered.addAll(consequences(page));
            if (!page.has("next")) {
                assertThat(answer.header("Link")).doesNotContain("rel=\"next\"");
                break;
            }
            assertThat(consequences(page)).hasSize(LIMIT);
            String next = page.required("next").asString();
            assertThat(answer.header("Link")).contains("<" + next + ">; rel=\"next\"");
            answer = given().urlEncodingEnabled(false).get(next);
        }
        assertThat(gathered).isEqualTo(consequences(whole));
    }

    @Test
    void anotherVersionOfTheCatalogueIsACause() throws Exception {
        String name = name("list");
        var list = (ObjectNode) Demo.catalogue(name);
        given(list).post("/v1/catalogues").then().statusCode(201);
        add(boughtFrom(name, 1));
        String id = given().get("/v1/projects/" + project + "/revisions/1").path("result.duty.axes[0].driveUnit");
        for (JsonNode unit : list.required("driveUnits")) {
            if (unit.required("id").asString().equals(id)) {
                ((ObjectNode) unit.required("price")).put("amount", "1.00");
            }
        }
        given(list).post("/v1/catalogues").then().statusCode(201);
        add(boughtFrom(name, 2));
        compare("")
                .then()
                .statusCode(200)
                .body("comparison.changes", hasSize(1))
                .body("comparison.changes[0].path", endsWith("/driveUnits/" + id + "/price"))
                .body(
                        "comparison.consequences.find { it.path == '/billOfMaterials/required/total' }.causes.role",
                        contains("NECESSARY_AND_SUFFICIENT"))
                .body(
                        "comparison.consequences.find { it.path == '/billOfMaterials/required/total' }.text",
                        containsString("price of drive unit " + id));
    }

    private static ObjectNode boughtFrom(String catalogue, int version) throws Exception {
        ObjectNode revision = first();
        ((ObjectNode) revision.required("catalogue")).put("name", catalogue).put("version", version);
        return revision;
    }

    @Test
    void aResultOfAnotherEngineIsLinkedToItsDrift() throws Exception {
        add(first());
        add(first());
        compare("").then().body("sameEngineAsStored", equalTo(true)).body("drift", hasSize(0));
        String path = "/v1/projects/" + project + "/revisions/1";
        var document =
                (ObjectNode) JsonMapper.shared().readTree(given().get(path).asByteArray());
        ((ObjectNode) document.required("result")).put("engineVersion", "0.0.1");
        OlderRevision.store(database, project, document);
        compare("")
                .then()
                .body("sameEngineAsStored", equalTo(false))
                .body("drift", contains(endsWith(path + "/drift")));
    }
}
