package io.axiswright.app.project;

import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.oneOf;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import io.axiswright.app.support.StudyStandIn;
import io.restassured.response.ValidatableResponse;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.context.annotation.Import;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Opens projects and adds revisions of the demonstration design. */
@Import(StudyStandIn.class)
abstract class ProjectFixture extends HttpTest {

    private static final String CATALOGUE = "project tests";

    @BeforeEach
    void storeTheCatalogue() {
        given(Demo.catalogue(CATALOGUE)).post("/v1/catalogues").then().statusCode(oneOf(200, 201));
    }

    ValidatableResponse open(String name) {
        var body = JsonMapper.shared().createObjectNode().put("name", name);
        return given(body)
                .post("/v1/projects")
                .then()
                .statusCode(201)
                .header("Location", notNullValue())
                .header("ETag", notNullValue());
    }

    String openAndGetId() {
        return open(name("project")).extract().path("id");
    }

    ValidatableResponse add(String project, @Nullable String ifMatch, JsonNode revision) {
        var request = given(revision);
        if (ifMatch != null) {
            request.header("If-Match", ifMatch);
        }
        return request.post("/v1/projects/{id}/revisions", project).then();
    }

    JsonNode revision(String message) {
        return Demo.revision(message, CATALOGUE, 1);
    }

    String etag(String project) {
        return given().get("/v1/projects/{id}", project).then().extract().header("ETag");
    }
}
