package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class BranchApiTest extends ProjectFixture {

    private ValidatableResponse makeBranch(String project, String name, int start) {
        JsonNode body = JsonMapper.shared().createObjectNode().put("name", name).put("start", start);
        return given(body).post("/v1/projects/{id}/branches", project).then();
    }

    private ValidatableResponse addTo(String branch, String project, @Nullable String ifMatch, JsonNode revision) {
        var request = given(revision).queryParam("branch", branch);
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.post("/v1/projects/{id}/revisions", project).then();
    }

    private ValidatableResponse restore(String project, int number, @Nullable String ifMatch) {
        JsonNode body = JsonMapper.shared()
                .createObjectNode()
                .put("number", number)
                .put("message", "back")
                .put("author", "tester");
        var request = given(body);
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.post("/v1/projects/{id}/restorations", project).then();
    }

    @Test
    void aBranchHasAHeadOfItsOwnAndTheProjectOneCount() {
        String project = openAndGetId();
        String first = add(project, "*", revision("one")).extract().header("ETag");
        String second = add(project, first, revision("two")).extract().header("ETag");

        var made = makeBranch(project, "left-hand", 1).statusCode(201);
        made.header("ETag", first).body("latest", equalTo(1)).body("start", equalTo(1));
        String third = addTo("left-hand", project, first, revision("variant"))
                .statusCode(201)
                .body("number", equalTo(3))
                .body("branch", equalTo("left-hand"))
                .body("parent", equalTo(1))
                .extract()
                .header("ETag");

        assertThat(etag(project)).isEqualTo(second);
        given().get(made.extract().header("Location"))
                .then()
                .header("ETag", third)
                .body("latest", equalTo(3));
        addTo("left-hand", project, first, revision("stale")).statusCode(412).header("ETag", third);
        add(project, second, revision("three on main"))
                .statusCode(201)
                .body("number", equalTo(4))
                .body("branch", equalTo("main"))
                .body("parent", equalTo(2));
        given().get("/v1/projects/{id}/revisions/3", project)
                .then()
                .body("branch", equalTo("left-hand"))
                .body("parent", equalTo(1));
        given().get("/v1/projects/{id}/revisions?branch=left-hand", project)
                .then()
                .body("items.number", equalTo(List.of(3)));
        given().get("/v1/projects/{id}/branches", project)
                .then()
                .body("items.name", equalTo(List.of("main", "left-hand")));
    }

    @Test
    void refusesBranchesWithoutMeaning() {
        String project = openAndGetId();
        makeBranch(project, "early", 1).statusCode(422).body("errors[0].pointer", equalTo("/start"));
        add(project, "*", revision("one")).statusCode(201);
        makeBranch(project, "Not a name", 1).statusCode(422).body("errors[0].pointer", equalTo("/name"));
        makeBranch(project, "main", 1).statusCode(409);
        makeBranch(UUID.randomUUID().toString(), "orphan", 1).statusCode(404);
        addTo("nowhere", project, "*", revision("lost")).statusCode(404);
        addTo("Not a name", project, "*", revision("lost"))
                .statusCode(400)
                .body("errors[0].parameter", equalTo("branch"));
        given().get("/v1/projects/{id}/branches/nowhere", project).then().statusCode(404);
    }

    private ValidatableResponse remove(String project, String branch, @Nullable String ifMatch) {
        var request = given();
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.delete("/v1/projects/{id}/branches/{branch}", project, branch)
                .then();
    }

    private ValidatableResponse label(String method, String project, int number, String label) {
        JsonNode body = JsonMapper.shared().createObjectNode().put("author", "tester");
        return (method.equals("PUT") ? given(body) : given())
                .request(method, "/v1/projects/{id}/revisions/{number}/labels/{label}", project, number, label)
                .then();
    }

    @Test
    void aRemovedBranchLeavesItsRevisions() {
        String project = openAndGetId();
        String first = add(project, "*", revision("one")).extract().header("ETag");
        makeBranch(project, "trial", 1).statusCode(201);
        String head = addTo("trial", project, first, revision("variant"))
                .statusCode(201)
                .extract()
                .header("ETag");

        remove(project, "trial", null).statusCode(428);
        remove(project, "trial", first).statusCode(412).header("ETag", head);
        remove(project, "trial", head).statusCode(204);

        given().get("/v1/projects/{id}/branches/trial", project).then().statusCode(404);
        remove(project, "trial", head).statusCode(404);
        addTo("trial", project, head, revision("late")).statusCode(404);
        given().get("/v1/projects/{id}/branches", project).then().body("items.name", equalTo(List.of("main")));
        given().get("/v1/projects/{id}/revisions/2", project)
                .then()
                .statusCode(200)
                .header("ETag", head)
                .body("branch", equalTo("trial"));
        given().get("/v1/projects/{id}/revisions?branch=trial", project)
                .then()
                .body("items.number", equalTo(List.of(2)));
        restore(project, 2, first).statusCode(201).body("number", equalTo(3)).body("branch", equalTo("main"));
        // a number names one revision for ever, and so does the name of its branch
        makeBranch(project, "trial", 1).statusCode(409);
        makeBranch(project, "again", 2).statusCode(201).body("start", equalTo(2));
        remove(project, "again", "*").statusCode(204);
        makeBranch(project, "again", 1).statusCode(201);
    }

    @Test
    void mainAndWhatBearsLabelsIsNotRemoved() {
        String project = openAndGetId();
        String first = add(project, "*", revision("one")).extract().header("ETag");
        makeBranch(project, "trial", 1).statusCode(201);
        addTo("trial", project, first, revision("variant")).statusCode(201);
        label("PUT", project, 1, "as-built").statusCode(200);
        label("PUT", project, 2, "quoted").statusCode(200);

        remove(project, "main", "*").statusCode(409).body("code", equalTo("CONFLICT"));
        remove(project, "trial", "*").statusCode(409).body("detail", containsString("2 (quoted)"));
        label("DELETE", project, 2, "quoted").statusCode(200);
        label("PUT", project, 2, "released").statusCode(200);
        remove(project, "trial", "*").statusCode(409).body("detail", containsString("2 (released)"));

        // the label of the revision a branch sets out from is another branch's
        makeBranch(project, "idle", 1).statusCode(201);
        remove(project, "idle", first).statusCode(204);
        remove(project, "nowhere", "*").statusCode(404);
        remove(UUID.randomUUID().toString(), "trial", "*").statusCode(404);
    }

    @Test
    void restoresAnOlderRevisionAsANewOne() {
        String project = openAndGetId();
        var changed = (ObjectNode) revision("two");
        changed.put("codeBasis", "NFPA_79");
        add(project, "*", revision("one")).statusCode(201);
        String head = add(project, "*", changed).statusCode(201).extract().header("ETag");

        restore(project, 1, null).statusCode(428);
        restore(project, 1, "\"stale\"").statusCode(412);
        restore(project, 9, head).statusCode(422).body("errors[0].pointer", equalTo("/number"));
        restore(project, 1, head)
                .statusCode(201)
                .body("number", equalTo(3))
                .body("parent", equalTo(2))
                .body("restores", equalTo(1))
                .body("codeBasis", equalTo("IEC_60204_1"));

        String old = given().get("/v1/projects/{id}/revisions/1", project).asString();
        String restored = given().get("/v1/projects/{id}/revisions/3", project).asString();
        assertThat(JsonMapper.shared().readTree(restored).get("design"))
                .isEqualTo(JsonMapper.shared().readTree(old).get("design"));
    }

    @Test
    void numbersStayGapFreeWhenManyWriteToManyBranches() throws Exception {
        String project = openAndGetId();
        add(project, "*", revision("start")).statusCode(201).body("parent", nullValue());
        int writers = 6;
        List<Callable<List<Integer>>> tasks = IntStream.range(0, writers)
                .<Callable<List<Integer>>>mapToObj(writer -> () -> {
                    String branch = "branch-" + writer % 3;
                    List<Integer> numbers = new ArrayList<>();
                    while (numbers.size() < 3) {
                        String seen = given().get("/v1/projects/{id}/branches/{branch}", project, branch)
                                .header("ETag");
                        var answer = addTo(branch, project, seen, revision("by " + writer))
                                .extract();
                        assertThat(answer.statusCode()).isIn(201, 412);
                        if (answer.statusCode() == 201) {
                            numbers.add(answer.path("number"));
                        }
                    }
                    return numbers;
                })
                .toList();
        for (int k = 0; k < 3; k++) {
            makeBranch(project, "branch-" + k, 1).statusCode(201);
        }

        List<Integer> all = new ArrayList<>();
        try (var threads = Executors.newFixedThreadPool(writers)) {
            for (var done : threads.invokeAll(tasks)) {
                all.addAll(done.get());
            }
        }

        assertThat(all)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(2, 1 + 3 * writers).boxed().toList());
    }
}
