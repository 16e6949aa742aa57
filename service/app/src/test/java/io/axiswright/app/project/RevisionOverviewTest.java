package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** With the real engine: the figures are those that can be counted in the revision itself. */
class RevisionOverviewTest extends HttpTest {

    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");

    @Autowired
    private JdbcClient database;

    private String project = "";

    private static ObjectNode example(String name) throws Exception {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    @BeforeEach
    void addARevision() throws Exception {
        project = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        given(example("addRevision.request.first-state"))
                .header("If-Match", "*")
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(201);
    }

    private Response overview() {
        Response answer = given().get("/v1/projects/{id}/revisions/1/overview", project);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    private static JsonNode tree(Response answer) {
        return JsonMapper.shared().readTree(answer.asString());
    }

    @Test
    void countsWhatTheRevisionHolds() {
        JsonNode revision = tree(given().get("/v1/projects/{id}/revisions/1", project));
        JsonNode overview = tree(overview());

        assertThat(overview.get("machine")).isEqualTo(revision.at("/design/name"));
        assertThat(overview.get("axes").asInt())
                .isEqualTo(revision.at("/design/axes").size());
        assertThat(overview.get("gateways").asInt())
                .isEqualTo(revision.at("/result/topology/gateways").size());
        assertThat(overview.get("branchCircuits").asInt())
                .isEqualTo(revision.at("/result/supply/circuits").size());
        List<String> units = revision.at("/result/duty/axes").findValuesAsString("driveUnit");
        int counted = 0;
        for (JsonNode unit : overview.get("driveUnits")) {
            counted += unit.get("count").asInt();
            assertThat(units).contains(unit.get("item").asString());
        }
        assertThat(counted).isPositive().isEqualTo(overview.get("axes").asInt());
        List<String> severities = revision.at("/result/findings").findValuesAsString("severity");
        assertThat(severities).isNotEmpty();
        assertThat(overview.at("/findings/violations").asInt()
                        + overview.at("/findings/cautions").asInt()
                        + overview.at("/findings/notes").asInt())
                .isEqualTo(severities.size());
        assertThat(overview.at("/findings/cautions").asLong())
                .isEqualTo(severities.stream().filter("CAUTION"::equals).count());

        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode line : revision.at("/result/billOfMaterials/required/lines")) {
            if (line.has("linePrice")) {
                sum = sum.add(new BigDecimal(line.at("/linePrice/amount").asString()));
            }
        }
        assertThat(new BigDecimal(overview.at("/bill/required/amount").asString()))
                .isEqualByComparingTo(sum)
                .isPositive();
    }

    @Test
    void isUnchangedForWhoHoldsItUntilALabelComes() {
        Response first = overview();
        first.then().body("revision.labels", empty());
        given().header("If-None-Match", first.header("ETag"))
                .get("/v1/projects/{id}/revisions/1/overview", project)
                .then()
                .statusCode(304);
        given(JsonMapper.shared().createObjectNode().put("author", "sales"))
                .put("/v1/projects/{id}/revisions/1/labels/quoted", project)
                .then()
                .statusCode(200);
        overview().then().body("revision.labels.name", contains("quoted"));
        given().get("/v1/projects/{id}/revisions/2/overview", project).then().statusCode(404);
    }

    /** An engine that worked out nothing but the duty. */
    @Test
    void whatAnOlderEngineDidNotTellIsLeftOut() {
        var document = (ObjectNode) tree(given().get("/v1/projects/{id}/revisions/1", project));
        var result = (ObjectNode) document.required("result");
        result.remove(List.of("topology", "controlPower", "braking", "supply", "billOfMaterials"));
        OlderRevision.store(database, project, document);
        JsonNode overview = tree(overview());
        assertThat(overview.get("axes").asInt()).isPositive();
        assertThat(overview.propertyNames())
                .doesNotContain("gateways", "controlSupplies", "buses", "branchCircuits", "bill");
    }
}
