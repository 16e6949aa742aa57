package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.blankOrNullString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Whatever is wrong with a request is said, with its place and without a word about our insides, and leaves nothing behind. */
abstract class RefusalTest extends HttpTest {

    private static final List<String> TABLES = List.of(
            "catalogue", "catalogue_version", "project", "branch", "revision", "revision_label", "idempotent_request");

    @Autowired
    private JdbcClient database;

    private List<Long> before = List.of();

    /** Counts what is stored; called again by tests that store something first. */
    @BeforeEach
    void countRows() {
        before = rows();
    }

    @AfterEach
    void nothingIsStored() {
        assertThat(rows()).isEqualTo(before);
    }

    private List<Long> rows() {
        return TABLES.stream()
                .map(table -> database.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single())
                .toList();
    }

    static ObjectNode example(String name) {
        return (ObjectNode) JsonMapper.shared().readTree(SpecFiles.read(SpecFiles.example(name)));
    }

    static ObjectNode sizing() {
        return example("SizingRequest.request.label-applicator");
    }

    static ObjectNode catalogue() {
        return example("Catalogue.request.bench-list");
    }

    static ObjectNode at(ObjectNode root, String pointer) {
        return (ObjectNode) root.at(pointer);
    }

    ValidatableResponse problem(Response answer, int status, String kind) {
        return answer.then()
                .statusCode(status)
                .contentType("application/problem+json")
                .body("status", equalTo(status))
                .body("code", equalTo(kind))
                .body(
                        "type",
                        equalTo("/problems/" + kind.toLowerCase(Locale.ROOT).replace('_', '-')))
                .body("title", not(blankOrNullString()))
                .body(not(matchesPattern("(?s).*(Exception|axiswright\\.|springframework|jackson|select ).*")));
    }

    void fault(Response answer, String code, String pointer) {
        problem(answer, 422, "INVALID_DESIGN")
                .body("errors.pointer", hasItem(pointer))
                .body("errors.find { it.pointer == '" + pointer + "' }.code", equalTo(code));
    }

    Response system(JsonNode body) {
        return given(body).post("/v1/sizing/system");
    }

    RequestSpecification raw(String body) {
        return given().contentType("application/json").body(body);
    }
}
