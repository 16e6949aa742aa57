package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;

import io.axiswright.app.support.Demo;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** What draft-ietf-httpapi-idempotency-key-header-07 asks for (sections 2.6 and 2.7), on every request that makes something. */
class IdempotentRequestsTest extends ProjectFixture {

    @Autowired
    private JdbcClient database;

    private static String newKey() {
        return '"' + UUID.randomUUID().toString() + '"';
    }

    private RequestSpecification keyed(JsonNode body, String key) {
        return given(body).header("Idempotency-Key", key);
    }

    private static ObjectNode named(String name) {
        return JsonMapper.shared().createObjectNode().put("name", name);
    }

    private static void assertSameAnswer(Response first, Response second) {
        assertThat(second.statusCode()).isEqualTo(first.statusCode());
        assertThat(second.asByteArray()).isEqualTo(first.asByteArray());
        for (String header : List.of("Location", "ETag", "Content-Type", "Content-Length")) {
            assertThat(second.header(header)).as(header).isEqualTo(first.header(header));
        }
    }

    @Test
    void openingAProjectIsAnsweredAsTheFirstTime() {
        String key = newKey();
        JsonNode body = named(name("retried"));

        Response first = keyed(body, key).post("/v1/projects");
        Response second = keyed(body, key).post("/v1/projects");

        assertThat(first.statusCode()).isEqualTo(201);
        assertSameAnswer(first, second);
    }

    @Test
    void addingARevisionIsAnsweredAsTheFirstTimeEvenWhenTheHeadHasMoved() {
        String project = openAndGetId();
        String key = newKey();
        String before = etag(project);
        JsonNode body = revision("once");
        Response first = keyed(body, key).header("If-Match", before).post("/v1/projects/{id}/revisions", project);
        assertThat(first.statusCode()).isEqualTo(201);
        add(project, "*", revision("by somebody else")).statusCode(201);

        // after a lost answer a caller may have looked again, and found the head of today
        for (String ifMatch : List.of(before, etag(project), "*")) {
            assertSameAnswer(
                    first, keyed(body, key).header("If-Match", ifMatch).post("/v1/projects/{id}/revisions", project));
        }
        given().get("/v1/projects/{id}/revisions", project).then().body("items", hasSize(2));
    }

    @Test
    void storingACatalogueIsAnsweredAsTheFirstTime() {
        String key = newKey();
        ObjectNode body = Demo.catalogue(name("retried"));
        Response first = keyed(body, key).post("/v1/catalogues");
        assertThat(first.statusCode()).isEqualTo(201);
        given(body.deepCopy().put("remark", "changed"))
                .post("/v1/catalogues")
                .then()
                .statusCode(201);

        assertSameAnswer(first, keyed(body, key).post("/v1/catalogues"));
    }

    @Test
    void aKeyStandsForOneRequestOnly() {
        String key = newKey();
        keyed(named("one"), key).post("/v1/projects").then().statusCode(201);

        keyed(named("another"), key)
                .post("/v1/projects")
                .then()
                .statusCode(422)
                .body("code", equalTo("IDEMPOTENCY_KEY_REUSED"));
        keyed(Demo.catalogue(name("another")), key)
                .post("/v1/catalogues")
                .then()
                .statusCode(422)
                .body("code", equalTo("IDEMPOTENCY_KEY_REUSED"));
        // written in another way it is the same request
        given().contentType("application/json")
                .body("{ \"name\" : \"one\" }")
                .header("Idempotency-Key", key)
                .post("/v1/projects")
                .then()
                .statusCode(201);
    }

    @Test
    void aRequestThatIsBeingWorkedOnIsNotBegunAgain() {
        String key = UUID.randomUUID().toString();
        JsonNode body = named(name("slow"));
        keyed(body, key).post("/v1/projects").then().statusCode(201);
        // as it stands while the first is under way
        database.sql("update idempotent_request set status = null where key = ?")
                .param(key)
                .update();

        keyed(body, key)
                .post("/v1/projects")
                .then()
                .statusCode(409)
                .header("Retry-After", notNullValue())
                .body("code", equalTo("REQUEST_IN_PROGRESS"));
    }

    @Test
    void aRequestThatFailedIsJudgedAgain() {
        String project = openAndGetId();
        String key = newKey();
        JsonNode body = revision("late");
        keyed(body, key)
                .header("If-Match", "\"stale\"")
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(412);

        keyed(body, key)
                .header("If-Match", etag(project))
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(201);
    }

    @Test
    void aKeyIsForgottenWhenItsTimeIsOver() {
        String key = UUID.randomUUID().toString();
        JsonNode body = named(name("long ago"));
        String first = keyed(body, key).post("/v1/projects").path("id");
        int today = database.sql("""
                        update idempotent_request set expires_at = expires_at - interval '24 hours'
                        where key = ? and expires_at between now() + interval '23 hours' and now() + interval '25 hours'""").param(key).update();
        assertThat(today).as("kept for 24 hours").isEqualTo(1);

        String second = keyed(body, key).post("/v1/projects").path("id");

        assertThat(second).isNotEqualTo(first);
    }

    @Test
    void aKeyThatIsNoneIsRefused() {
        for (String key : List.of("k".repeat(201), "\"open", "\"\"")) {
            keyed(named("refused"), key)
                    .post("/v1/projects")
                    .then()
                    .statusCode(400)
                    .body("errors[0].header", equalTo("Idempotency-Key"));
        }
    }

    @Test
    void manyAtOnceHaveOneEffect() throws Exception {
        String project = openAndGetId();
        String key = newKey();
        JsonNode body = revision("all at once");
        List<Callable<Response>> senders = IntStream.range(0, 8)
                .<Callable<Response>>mapToObj(k ->
                        () -> keyed(body, key).header("If-Match", "*").post("/v1/projects/{id}/revisions", project))
                .toList();

        try (var threads = Executors.newFixedThreadPool(8)) {
            for (var done : threads.invokeAll(senders)) {
                assertThat(done.get().statusCode()).isIn(201, 409);
            }
        }

        given().get("/v1/projects/{id}/revisions", project).then().body("items", hasSize(1));
    }
}
