package io.axiswright.app.project;

import static org.hamcrest.Matchers.notNullValue;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import io.axiswright.app.wire.WireFormat;
import io.restassured.response.ValidatableResponse;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Opens projects and adds revisions of the demonstration design. */
abstract class ProjectFixture extends HttpTest {

    private static final String CATALOGUE = "project tests";

    ValidatableResponse open(String name) {
        var body = WireFormat.mapper().createObjectNode().put("name", name);
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
        given(Demo.catalogue(CATALOGUE)).post("/v1/catalogues");
        return Demo.revision(message, CATALOGUE, 1);
    }

    String etag(String project) {
        return given().get("/v1/projects/{id}", project).then().extract().header("ETag");
    }
}
