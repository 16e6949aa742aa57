package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A history kept elsewhere becomes one here: all of it or nothing, on the state that was named. */
class RevisionImportTest extends ProjectFixture {

    private static final String PATH = "/v1/projects/{id}/revisions:import";

    private final ObjectNode history = JsonMapper.shared().createObjectNode();
    private final ArrayNode revisions = history.putArray("revisions");
    private String project = "";

    @BeforeEach
    void openAProject() {
        project = openAndGetId();
    }

    private ObjectNode made(String message, @Nullable String when) {
        ObjectNode revision = (ObjectNode) revision(message);
        if (when != null) {
            revision.put("madeAt", when);
        }
        revisions.add(revision);
        return revision;
    }

    private ValidatableResponse send(@Nullable String ifMatch) {
        var request = givenInParts(history);
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.post(PATH, project).then();
    }

    private List<String> stored() {
        return given().get("/v1/projects/{id}/revisions", project).path("items.message");
    }

    @Test
    void isStoredInItsOrderWithItsDates() {
        made("first", "2019-05-06T07:08:09Z");
        made("second", null);
        made("third", "2021-02-03T04:05:06.123456789Z");

        ValidatableResponse answer = send(etag(project)).statusCode(201);

        answer.body("revisions.number", contains(1, 2, 3))
                .body("revisions.parent", contains(nullValue(), equalTo(1), equalTo(2)))
                .body("revisions.madeAt", contains("2019-05-06T07:08:09Z", null, "2021-02-03T04:05:06.123456Z"))
                .body("revisions.author", everyItem(equalTo("tester")));
        assertThat(answer.extract().header("ETag")).isEqualTo(etag(project));
        String latest = given().get(answer.extract().header("Location")).asString();
        assertThat(JsonMapper.shared().readTree(latest).at("/madeAt").asString())
                .isEqualTo("2021-02-03T04:05:06.123456Z");
        given().get("/v1/projects/{id}/revisions", project)
                .then()
                .body("items.madeAt", contains("2021-02-03T04:05:06.123456Z", null, "2019-05-06T07:08:09Z"))
                .body("items.etag[0]", equalTo(etag(project)));
        // what came in is a state to build on as any other
        add(project, etag(project), revision("fourth")).statusCode(201).body("parent", equalTo(3));
    }

    @Test
    void keepsToThePreconditionOfAnyRevision() {
        made("first", null);
        made("second", null);
        String empty = etag(project);
        send(null).statusCode(428);
        send("\"stale\"").statusCode(412).header("ETag", empty);
        send("first").statusCode(400);
        assertThat(stored()).isEmpty();

        send(empty).statusCode(201);

        send(empty).statusCode(412).header("ETag", etag(project));
        send("*").statusCode(201).body("revisions.parent", contains(2, 3));
    }

    @Test
    void oneFaultKeepsAllOut() {
        made("first", null);
        ObjectNode nowhere = made("second", null);
        ((ObjectNode) nowhere.at("/design/axes/0")).put("stopZone", "nowhere");
        ((ObjectNode) made("third", null).get("catalogue")).put("name", "nobody sells it");

        send("*")
                .statusCode(422)
                .body("errors.pointer", contains("/revisions/1/design/axes/0/stopZone", "/revisions/2/catalogue"));
        assertThat(stored()).isEmpty();
        assertThat(add(project, "*", revision("after")).extract().<Integer>path("number"))
                .as("no number is lost")
                .isEqualTo(1);
    }

    @Test
    void aRevisionIsNotMadeInTheFutureNorBeforeItCouldBe() {
        made("first", Instant.now().plus(1, ChronoUnit.DAYS).toString());
        made("second", "1969-12-31T23:59:59Z");
        made("third", "2020-01-01T00:00:00Z");
        send("*")
                .statusCode(422)
                .body("errors.pointer", contains("/revisions/0/madeAt", "/revisions/1/madeAt"))
                .body("errors.code", everyItem(equalTo("OUT_OF_RANGE")));
        revisions.removeAll();
        made("yesterday", "yesterday");
        send("*").statusCode(422).body("errors.code", contains("UNKNOWN_VALUE"));
    }

    @Test
    void goesToTheBranchThatIsNamed() {
        add(project, "*", revision("on main")).statusCode(201);
        given(JsonMapper.shared().createObjectNode().put("name", "variant").put("start", 1))
                .post("/v1/projects/{id}/branches", project)
                .then()
                .statusCode(201);
        made("imported", null);

        givenInParts(history)
                .header("If-Match", etag(project))
                .queryParam("branch", "variant")
                .post(PATH, project)
                .then()
                .statusCode(201)
                .body("revisions.branch", contains("variant"))
                .body("revisions.parent", contains(1));
    }

    @Test
    void sentAgainHasOneEffect() {
        made("first", null);
        made("second", null);
        String key = '"' + UUID.randomUUID().toString() + '"';
        String empty = etag(project);

        Response once = sendKeyed(empty, key);
        Response again = sendKeyed(empty, key);

        once.then().statusCode(201);
        assertThat(again.asString()).isEqualTo(once.asString());
        assertThat(stored()).containsExactly("second", "first");
    }

    private Response sendKeyed(String ifMatch, String key) {
        return givenInParts(history)
                .header("If-Match", ifMatch)
                .header("Idempotency-Key", key)
                .post(PATH, project);
    }

    @Test
    void takesOneToAHundred() {
        send("*").statusCode(422).body("errors[0].pointer", equalTo("/revisions"));
        JsonNode revision = JsonMapper.shared().createObjectNode();
        for (int k = 0; k < 101; k++) {
            revisions.add(revision);
        }
        send("*").statusCode(422).body("errors.code", contains("WRONG_COUNT"));
        revisions.removeAll();
        revisions.add(revision);
        send("*").statusCode(422).body("errors", hasSize(5));
    }
}
