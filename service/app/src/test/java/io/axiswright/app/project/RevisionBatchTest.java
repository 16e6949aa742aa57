package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Many revisions by one request: each is judged as if it came by itself, by the same preconditions. */
class RevisionBatchTest extends ProjectFixture {

    private static final String PATH = "/v1/revisions:batch";

    private final ObjectNode batch = JsonMapper.shared().createObjectNode();
    private final ArrayNode revisions = batch.putArray("revisions");
    private String project = "";

    @BeforeEach
    void openAProject() {
        project = openAndGetId();
    }

    private ValidatableResponse send() {
        return givenInParts(batch).urlEncodingEnabled(false).post(PATH).then().statusCode(200);
    }

    private ObjectNode asked(String where, @Nullable String ifMatch, String kind, String member, JsonNode content) {
        ObjectNode asked = revisions.addObject().put("project", where);
        if (ifMatch != null) {
            asked.put("ifMatch", ifMatch);
        }
        asked.putObject("change").put("kind", kind).set(member, content);
        return asked;
    }

    private ObjectNode whole(String where, @Nullable String ifMatch, JsonNode revision) {
        return asked(where, ifMatch, "REVISION", "revision", revision);
    }

    private static JsonNode json(String text) {
        return JsonMapper.shared().readTree(text.replace('\'', '"'));
    }

    private List<String> history(String where) {
        return given().get("/v1/projects/{id}/revisions", where).path("items.message");
    }

    @Test
    void eachStandsOrFallsByItsOwnPrecondition() {
        String other = openAndGetId();
        String empty = etag(project);
        whole(project, empty, revision("first"));
        whole(project, empty, revision("too late"));
        whole(project, null, revision("unguarded"));
        whole(other, etag(other), revision("elsewhere"));
        whole(project, "no tag", revision("malformed"));
        whole(project, "*", revision("whatever is there"));

        ValidatableResponse answer = send();

        answer.body("items.index", equalTo(List.of(0, 1, 2, 3, 4, 5)))
                .body("items.status", equalTo(List.of(201, 412, 428, 201, 400, 201)))
                .body("items[0].revision.number", equalTo(1))
                .body("items[5].revision.parent", equalTo(1))
                .body("items[1].problem.detail", containsString(answer.extract().path("items[0].revision.etag")))
                .body("items[1].problem.instance", equalTo(PATH))
                .body("items[2].problem.errors.pointer", contains("/ifMatch"))
                .body("items[4].problem.errors.pointer", contains("/ifMatch"));
        assertThat(history(project)).containsExactly("whatever is there", "first");
        assertThat(history(other)).containsExactly("elsewhere");
        assertThat(etag(project)).isEqualTo(answer.extract().path("items[5].revision.etag"));
    }

    /** What a whole revision, patches and a restoration make by themselves, a batch makes of them. */
    @Test
    void takesEveryWayARevisionIsMade() {
        whole(project, "*", revision("first"));
        asked(project, "*", "MERGE_PATCH", "patch", json("""
                {'message':'merged','author':'tester','codeBasis':'NFPA_79','design':{'description':null}}"""));
        asked(project, "*", "JSON_PATCH", "patch", json("""
                [{'op':'test','path':'/codeBasis','value':'NFPA_79'},
                 {'op':'replace','path':'/design/axes/0/description','value':null},
                 {'op':'add','path':'/message','value':'patched'},{'op':'add','path':'/author','value':'tester'}]"""));
        asked(project, "*", "RESTORATION", "restoration", json("{'number':1,'message':'back','author':'tester'}"));

        send().body("items.status", equalTo(List.of(201, 201, 201, 201)))
                .body("items.revision.codeBasis", contains("IEC_60204_1", "NFPA_79", "NFPA_79", "IEC_60204_1"))
                .body("items[3].revision.restores", equalTo(1));
        assertThat(history(project)).containsExactly("back", "patched", "merged", "first");
        // a null of a patch takes away
        for (int number : new int[] {2, 3}) {
            JsonNode design = JsonMapper.shared()
                    .readTree(given().get("/v1/projects/{id}/revisions/{n}", project, number)
                            .asString())
                    .get("design");
            assertThat(
                            number == 2
                                    ? design.has("description")
                                    : design.at("/axes/0").has("description"))
                    .isFalse();
        }
    }

    @Test
    void pointsIntoTheSingleRevision() {
        JsonNode faulty = revision("faulty");
        ((ObjectNode) faulty.at("/design/axes/0")).put("stopZone", "nowhere");
        whole(project, "*", faulty);
        ObjectNode unknown = revisionWith("catalogue", json("{'name':'nobody sells it','version':1}"));
        whole(project, "*", unknown);
        whole(project, "*", revision("first"));
        asked(project, "*", "JSON_PATCH", "patch", json("[{'op':'remove','path':'/nothing'}]"));
        asked(project, "*", "MERGE_PATCH", "patch", json("{'message':'m','author':'a','design':{'axes':'none'}}"));
        asked(project, "*", "RESTORATION", "restoration", json("{'number':9,'message':'m','author':'a'}"));
        revisions.add("no revision");
        whole(project, "*", revision("misspelt")).put("brunch", "main");
        whole(project, "*", revision("nowhere")).put("branch", "nowhere");
        whole("01980000-0000-7000-8000-000000000001", "*", revision("of nobody"));
        revisions.addObject().put("project", project).putObject("change").put("kind", "MAGIC");

        send().body("items.status", equalTo(List.of(422, 422, 201, 422, 422, 422, 422, 422, 404, 404, 422)))
                .body("items[0].problem.errors.pointer", contains("/change/revision/design/axes/0/stopZone"))
                .body("items[1].problem.errors.pointer", contains("/change/revision/catalogue"))
                .body("items[3].problem.errors.pointer", contains("/change/patch/0/path"))
                .body("items[4].problem.errors.pointer", contains("/design/axes"))
                .body("items[5].problem.errors.pointer", contains("/change/restoration/number"))
                .body("items[6].problem.errors.pointer", contains(""))
                .body("items[7].problem.errors.pointer", contains("/brunch"))
                .body("items[10].problem.errors.pointer", contains("/change/kind"));
        assertThat(history(project)).containsExactly("first");
    }

    private ObjectNode revisionWith(String member, JsonNode value) {
        ObjectNode revision = (ObjectNode) revision("changed");
        revision.set(member, value);
        return revision;
    }

    @Test
    void sentAgainStoresOnlyWhatWasNotStored() {
        String key = '"' + UUID.randomUUID().toString() + '"';
        String other = openAndGetId();
        whole(project, etag(project), revision("once"));
        ObjectNode late = whole(other, "\"stale\"", revision("late"));
        var first = givenInParts(batch).header("Idempotency-Key", key).post(PATH);
        first.then().body("items.status", equalTo(List.of(201, 412)));
        add(project, "*", revision("by somebody else")).statusCode(201);
        late.put("ifMatch", etag(other));

        for (int time = 1; time <= 2; time++) {
            Response again = givenInParts(batch).header("Idempotency-Key", key).post(PATH);
            again.then().body("items.status", equalTo(List.of(201, 201)));
            assertThat(again.<Object>path("items[0]")).isEqualTo(first.path("items[0]"));
        }
        assertThat(history(project)).containsExactly("by somebody else", "once");
        assertThat(history(other)).containsExactly("late");

        revisions.remove(0);
        givenInParts(batch)
                .header("Idempotency-Key", key)
                .post(PATH)
                .then()
                .body("items[0].problem.code", equalTo("IDEMPOTENCY_KEY_REUSED"));
        assertThat(history(other)).hasSize(1);
    }

    @Test
    void answersLineByLine() {
        whole(project, "*", revision("one"));
        whole(project, "*", revision("two"));

        Response lines = givenInParts(batch).accept("application/x-ndjson").post(PATH);

        assertThat(lines.asString().lines().map(JsonMapper.shared()::readTree))
                .extracting(line -> line.at("/revision/message").asString())
                .containsExactly("one", "two");
    }

    @Test
    void takesOneToFiveHundred() {
        givenInParts(batch).post(PATH).then().statusCode(422).body("errors[0].pointer", equalTo("/revisions"));
        for (int k = 0; k < 500; k++) {
            revisions.addObject();
        }
        send().body("items", hasSize(500));
        revisions.addObject();
        givenInParts(batch).post(PATH).then().statusCode(422).body("errors[0].code", equalTo("WRONG_COUNT"));
    }
}
