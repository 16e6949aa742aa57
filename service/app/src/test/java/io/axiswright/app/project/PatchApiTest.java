package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class PatchApiTest extends ProjectFixture {

    private static final String MERGE = "application/merge-patch+json";
    private static final String OPERATIONS = "application/json-patch+json";
    private static final String BY = "'message':'changed','author':'tester'";

    private String project = "";
    private String head = "";

    @BeforeEach
    void addARevision() {
        project = openAndGetId();
        head = add(project, "*", revision("one")).extract().header("ETag");
    }

    private ValidatableResponse patch(String form, @Nullable String ifMatch, String patch) {
        var request = given().contentType(form).body(patch.replace('\'', '"'));
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.patch("/v1/projects/{id}/branches/main/latest", project).then();
    }

    private JsonNode stored(int number) {
        return JsonMapper.shared()
                .readTree(given().get("/v1/projects/{id}/revisions/{number}", project, number)
                        .asString());
    }

    @Test
    void aMergePatchMakesTheNextRevision() {
        var added = patch(
                        MERGE,
                        head,
                        "{" + BY + ",'codeBasis':'NFPA_79','design':{'site':{'altitude':{'value':1200,'unit':'m'}}}}")
                .statusCode(201)
                .body("number", equalTo(2))
                .body("parent", equalTo(1))
                .body("message", equalTo("changed"))
                .body("codeBasis", equalTo("NFPA_79"));

        assertThat(etag(project)).isEqualTo(added.extract().header("ETag"));
        assertThat(stored(2).at("/design/site/altitude/value").asDouble()).isEqualTo(1200);
        assertThat(stored(2).at("/design/axes")).isEqualTo(stored(1).at("/design/axes"));
        assertThat(stored(1).at("/codeBasis").asString()).isEqualTo("IEC_60204_1");
    }

    @Test
    void aJsonPatchMakesTheNextRevision() {
        String id = stored(1).at("/design/axes/0/id").asString();
        patch(
                        OPERATIONS,
                        head,
                        "[{'op':'test','path':'/design/axes/0/id','value':'" + id + "'},"
                                + "{'op':'add','path':'/message','value':'changed'},"
                                + "{'op':'add','path':'/author','value':'tester'},"
                                + "{'op':'replace','path':'/codeBasis','value':'NFPA_79'}]")
                .statusCode(201)
                .body("number", equalTo(2));
        assertThat(stored(2).at("/design")).isEqualTo(stored(1).at("/design"));
    }

    @Test
    void whatComesOfAPatchMustBeARevision() {
        patch(MERGE, head, "{'codeBasis':'NFPA_79'}")
                .statusCode(422)
                .body("errors.pointer", equalTo(List.of("/message", "/author")));
        patch(MERGE, head, "{" + BY + ",'design':{'site':null}}")
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/design/site"));
        patch(MERGE, head, "{" + BY + ",'result':{}}").statusCode(422).body("errors[0].pointer", equalTo("/result"));
        patch(OPERATIONS, head, "[{'op':'remove','path':'/nothing'}]")
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/0/path"));
        patch(OPERATIONS, head, "[{'op':'test','path':'/codeBasis','value':'NFPA_79'}]")
                .statusCode(409);
        patch(MERGE, head, "{").statusCode(400);
        patch(MERGE, head, "{" + BY + ",'message':'again','design':{'name':'a','name':'b'}}")
                .statusCode(422)
                .body("errors.pointer", equalTo(List.of("/message", "/design/name")))
                .body("errors.code", equalTo(List.of("DUPLICATE_MEMBER", "DUPLICATE_MEMBER")));
        patch(
                        OPERATIONS,
                        head,
                        "["
                                + "{'op':'add','path':'/d','value':{}},{'op':'move','from':'/design','path':'/d/design'},{'op':'move','from':'/d','path':'/design'},"
                                        .repeat(80)
                                + "{'op':'test','path':'/codeBasis','value':'IEC_60204_1'}]")
                .statusCode(400)
                .body("code", equalTo("MALFORMED_JSON"));
        given().get("/v1/projects/{id}/revisions", project).then().body("items", hasSize(1));
    }

    @Test
    void keepsToThePreconditionOfAnyRevision() {
        patch(MERGE, null, "{" + BY + "}").statusCode(428);
        patch(MERGE, "\"stale\"", "{" + BY + "}").statusCode(412).header("ETag", head);
        patch("application/json", head, "{}")
                .statusCode(415)
                .header("Accept-Patch", allOf(containsString(MERGE), containsString(OPERATIONS)));
        project = openAndGetId();
        patch(MERGE, "*", "{" + BY + "}").statusCode(409);
    }

    /** It is the same request in whatever order its members stand and with whatever blanks, but not as another form of patch. */
    @Test
    void whatIsPatchedCanBeReadAtTheSamePlace() {
        String latest = "/v1/projects/{id}/branches/main/latest";
        Response read = given().get(latest, project);
        read.then().statusCode(200).header("ETag", head);
        assertThat(read.asByteArray())
                .isEqualTo(given().get(read.header("Content-Location")).asByteArray());

        patch(MERGE, read.header("ETag"), "{" + BY + "}").statusCode(201);

        given().header("If-None-Match", head)
                .get(latest, project)
                .then()
                .statusCode(200)
                .body("number", equalTo(2));
        given().header("If-None-Match", etag(project))
                .get(latest, project)
                .then()
                .statusCode(304);
        project = openAndGetId();
        given().get(latest, project).then().statusCode(404);
    }

    @Test
    void aPatchSentAgainHasOneEffect() {
        String patch = "{'message':'once','author':'me','design':{'name':'n'}}";
        for (String same : List.of(patch, patch, "{ 'author':'me', 'design':{'name':'n'},\n'message':'once' }")) {
            keyed(MERGE, same).statusCode(201).body("number", equalTo(2));
        }
        keyed(MERGE, patch.replace("once", "twice")).statusCode(422).body("code", equalTo("IDEMPOTENCY_KEY_REUSED"));
        keyed(OPERATIONS, patch).statusCode(422).body("code", equalTo("IDEMPOTENCY_KEY_REUSED"));
        given().get("/v1/projects/{id}/revisions", project).then().body("items", hasSize(2));
    }

    private ValidatableResponse keyed(String form, String patch) {
        return given().contentType(form)
                .header("If-Match", head)
                .header("Idempotency-Key", "\"patch of " + project + "\"")
                .body(patch.replace('\'', '"'))
                .patch("/v1/projects/{id}/branches/main/latest", project)
                .then();
    }
}
