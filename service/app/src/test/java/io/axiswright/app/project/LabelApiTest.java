package io.axiswright.app.project;

import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class LabelApiTest extends ProjectFixture {

    private String project = "";

    @BeforeEach
    void addTwoRevisions() {
        project = openAndGetId();
        add(project, "*", revision("one")).statusCode(201).body("labels", empty());
        add(project, "*", revision("two")).statusCode(201);
    }

    private ValidatableResponse put(int number, String label, String author) {
        return given(JsonMapper.shared().createObjectNode().put("author", author))
                .put("/v1/projects/{id}/revisions/{number}/labels/{label}", project, number, label)
                .then();
    }

    private ValidatableResponse take(int number, String label) {
        return given().delete("/v1/projects/{id}/revisions/{number}/labels/{label}", project, number, label)
                .then();
    }

    @Test
    void labelsComeAndGoAndLeaveTheRevisionAsItIs() {
        String etag = given().get("/v1/projects/{id}/revisions/1", project).header("ETag");

        put(1, "quoted", "sales").statusCode(200).body("labels.name", equalTo(List.of("quoted")));
        put(1, "quoted", "somebody else").statusCode(200).body("labels.author", equalTo(List.of("sales")));
        put(1, "as-built", "works").body("labels.name", equalTo(List.of("quoted", "as-built")));
        put(2, "quoted", "sales").statusCode(200);

        given().get("/v1/projects/{id}/revisions", project)
                .then()
                .body("items.labels.name", equalTo(List.of(List.of("quoted"), List.of("quoted", "as-built"))));
        given().get("/v1/projects/{id}/revisions?label=as-built", project)
                .then()
                .body("items.number", equalTo(List.of(1)));
        given().get("/v1/projects/{id}/revisions/1", project).then().header("ETag", etag);
        take(1, "quoted").statusCode(200).body("labels.name", equalTo(List.of("as-built")));
        take(1, "quoted").statusCode(200);
    }

    @Test
    void aReleasedRevisionIsLocked() {
        put(1, "quoted", "sales").statusCode(200);
        put(1, "released", "chief").statusCode(200);

        put(1, "as-built", "works").statusCode(409);
        take(1, "quoted").statusCode(409);
        take(1, "released").statusCode(409);
        // what changes nothing is no change
        put(1, "quoted", "sales").statusCode(200);
        take(1, "never-put").statusCode(200).body("labels.name", equalTo(List.of("quoted", "released")));
        put(2, "as-built", "works").statusCode(200);
    }

    @Test
    void knowsWhatItHasNot() {
        put(3, "quoted", "sales").statusCode(404);
        take(3, "quoted").statusCode(404);
        put(1, "Not a label", "sales").statusCode(400).body("errors[0].parameter", equalTo("label"));
        given(JsonMapper.shared().createObjectNode())
                .put("/v1/projects/{id}/revisions/1/labels/quoted", project)
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/author"));
        project = UUID.randomUUID().toString();
        put(1, "quoted", "sales").statusCode(404);
    }
}
