package io.axiswright.app.sizing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

        Response answer = givenInParts(batch).urlEncodingEnabled(false).post(PATH);

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
        JsonNode whole = tree(givenInParts(batch).post(PATH).asString());

        Response lines = givenInParts(batch).accept("application/x-ndjson").post(PATH);

        lines.then().statusCode(200).contentType(startsWith("application/x-ndjson"));
        assertThat(lines.asString()).endsWith("\n");
        assertThat(lines.asString().lines().map(BatchApiTest::tree).toList())
                .isEqualTo(whole.get("items").valueStream().toList());
    }

    @Test
    void takesOneToFiveHundred() {
        givenInParts(batch).post(PATH).then().statusCode(422).body("errors[0].pointer", equalTo("/requests"));
        for (int k = 0; k < 500; k++) {
            requests.addObject();
        }
        Response most = givenInParts(batch).post(PATH);
        most.then().statusCode(200);
        assertThat(most.jsonPath().getList("items.index", Integer.class))
                .hasSize(500)
                .isSorted();
        requests.addObject();
        givenInParts(batch).post(PATH).then().statusCode(422).body("errors[0].code", equalTo("WRONG_COUNT"));
    }

    /** Ten megabytes in all are more than a body may have alone; five in one request are too much there as well. */
    @Test
    void takesMoreThanOneBodyButNoRequestThatWouldBeTooLargeAlone() {
        for (int k = 0; k < 10; k++) {
            requests.addObject().put("padding", "x".repeat(k == 4 ? 5 << 20 : 1 << 19));
        }

        givenInParts(batch)
                .post(PATH)
                .then()
                .statusCode(200)
                .body("items.status", equalTo(List.of(422, 422, 422, 422, 413, 422, 422, 422, 422, 422)))
                .body("items[4].problem.code", equalTo("BODY_TOO_LARGE"))
                .body("items[5].problem.errors[0].pointer", equalTo("/padding"));
    }

    /** Announced, not sent: the answer comes at once. */
    @Test
    void refusesABatchOfMoreThanSixtyFourMegabytes() throws Exception {
        try (var socket = new Socket("localhost", port())) {
            socket.getOutputStream().write("""
                    POST %s HTTP/1.1\r
                    Host: localhost\r
                    Content-Type: application/json\r
                    Content-Length: %d\r
                    Connection: close\r
                    \r
                    """.formatted(PATH, (64 << 20) + 1).getBytes(StandardCharsets.US_ASCII));
            var answer = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            assertThat(answer.readLine()).startsWith("HTTP/1.1 413");
        }
    }

    @Test
    void refusesWhatIsNoBatch() {
        for (String body : List.of("", "{\"requests\": [{]}", "{\"requests\": [{}]} x")) {
            given().contentType("application/json").body(body).post(PATH).then().statusCode(400);
        }
        for (String body :
                List.of("[]", "\"text\"", "{}", "{\"requests\": {\"a\": 1}}", "{\"requests\": [{}], \"more\": [1]}")) {
            given().contentType("application/json").body(body).post(PATH).then().statusCode(422);
        }
    }

    @Test
    void servesItsTwoFormsOnly() {
        requests.addObject();
        givenInParts(batch).accept("text/csv").post(PATH).then().statusCode(406);
        givenInParts(batch).accept("*/*").post(PATH).then().contentType("application/json");
    }

    /** What is expected follows from RFC 9110, 12.5.1: the closest range tells the quality of a form. */
    @ParameterizedTest
    @CsvSource({
        "'application/x-ndjson, application/json', x-ndjson",
        "'application/json, application/x-ndjson', json",
        "'application/json, application/x-ndjson;q=0.1', json",
        "'application/json;q=0.5, application/x-ndjson;q=0.6', x-ndjson",
        "'application/x-ndjson;q=0, application/json', json",
        "'*/*;q=0.5, application/x-ndjson;q=0.4', json",
        "'*/*;q=0.5, application/json;q=0.4', x-ndjson",
        "'application/*', json",
        "'application/x-ndjson', x-ndjson"
    })
    void answersInTheFormThatIsLikedBest(String accepted, String form) {
        requests.addObject();
        givenInParts(batch).accept(accepted).post(PATH).then().statusCode(200).contentType("application/" + form);
    }
}
