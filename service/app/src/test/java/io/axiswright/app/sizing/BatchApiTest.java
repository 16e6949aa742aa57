package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class BatchApiTest extends HttpTest {

    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");
    private static final String PATH = "/v1/sizing/system:batch";

    private final ObjectNode batch = JsonMapper.shared().createObjectNode();
    private final ArrayNode requests = batch.putArray("requests");

    private static ObjectNode example(String name) throws Exception {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    private static JsonNode tree(String json) {
        return JsonMapper.shared().readTree(json);
    }

    /** A good request, one with a fault, another good one, and something that is no request at all. */
    private void fourOfAllSorts() throws Exception {
        ObjectNode good = example("SizingRequest.request.label-applicator");
        ObjectNode faulty = good.deepCopy();
        ((ObjectNode) faulty.at("/design/axes/0")).put("stopZone", "nowhere");
        requests.add(good)
                .add(faulty)
                .add(good.deepCopy().put("codeBasis", "NFPA_79"))
                .add("no request");
    }

    @Test
    void answersEachByItselfAsItWouldAlone() throws Exception {
        fourOfAllSorts();

        Response answer = given(batch).urlEncodingEnabled(false).post(PATH);

        answer.then()
                .statusCode(200)
                .contentType("application/json")
                .body("items.index", equalTo(List.of(0, 1, 2, 3)))
                .body("items.status", equalTo(List.of(200, 422, 200, 422)))
                .body("items[1].problem.errors[0].pointer", equalTo("/design/axes/0/stopZone"))
                .body("items[1].problem.instance", equalTo(PATH))
                .body("items[3].problem.errors[0].code", equalTo("WRONG_TYPE"));
        JsonNode items = tree(answer.asString()).get("items");
        for (int k : new int[] {0, 2}) {
            String alone = given(requests.get(k)).post("/v1/sizing/system").asString();
            assertThat(items.get(k).get("result")).isEqualTo(tree(alone));
        }
    }

    @Test
    void answersLineByLineTheSame() throws Exception {
        fourOfAllSorts();
        JsonNode whole = tree(given(batch).post(PATH).asString());

        Response lines = given(batch).accept("application/x-ndjson").post(PATH);

        lines.then().statusCode(200).contentType(startsWith("application/x-ndjson"));
        assertThat(lines.asString()).endsWith("\n");
        assertThat(lines.asString().lines().map(BatchApiTest::tree).toList())
                .isEqualTo(whole.get("items").valueStream().toList());
    }

    @Test
    void takesOneToFiveHundred() {
        given(batch).post(PATH).then().statusCode(422).body("errors[0].pointer", equalTo("/requests"));
        for (int k = 0; k < 500; k++) {
            requests.addObject();
        }
        Response most = given(batch).post(PATH);
        most.then().statusCode(200);
        assertThat(most.jsonPath().getList("items.index", Integer.class))
                .hasSize(500)
                .isSorted();
        requests.addObject();
        given(batch).post(PATH).then().statusCode(422).body("errors[0].code", equalTo("WRONG_COUNT"));
    }

    @Test
    void servesItsTwoFormsOnly() {
        requests.addObject();
        given(batch).accept("text/csv").post(PATH).then().statusCode(406);
        given(batch).accept("*/*").post(PATH).then().contentType("application/json");
    }
}
