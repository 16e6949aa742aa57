package io.axiswright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

class ConditionalReadsTest extends HttpTest {

    @Test
    void everyReadHasAnEntityTagAndIsAnswered304ToWhomHoldsIt() {
        String name = name("read").replace(' ', '-');
        given(Demo.catalogue(name)).post("/v1/catalogues").then().statusCode(201);
        String project = given(JsonMapper.shared().createObjectNode().put("name", name))
                .post("/v1/projects")
                .path("id");
        given(Demo.revision("one", name, 1))
                .header("If-Match", "*")
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(201);
        List<String> paths = Stream.of(
                        "/v1/catalogues?limit=1",
                        "/v1/catalogues/" + name,
                        "/v1/catalogues/" + name + "/versions/1",
                        "/v1/projects?limit=1",
                        "/v1/projects/{id}",
                        "/v1/projects/{id}/branches",
                        "/v1/projects/{id}/branches/main",
                        "/v1/projects/{id}/revisions",
                        "/v1/projects/{id}/revisions/1",
                        "/v1/projects/{id}/revisions/1/drift",
                        "/v1/projects/{id}/comparisons?from=1&to=1",
                        "/v1/findings",
                        "/v1/findings/CONTROL-VOLTAGE-LOW",
                        "/v1/demo/request",
                        "/problems",
                        "/problems/not-found",
                        "/openapi.json")
                .map(path -> path.replace("{id}", project))
                .toList();
        for (String path : paths) {
            String etag = given().get(path)
                    .then()
                    .statusCode(200)
                    .header("ETag", matchesPattern("\"[^\"]+\""))
                    .header("Cache-Control", matchesPattern("no-cache, private|max-age=.*immutable"))
                    .extract()
                    .header("ETag");
            given().header("If-None-Match", etag)
                    .get(path)
                    .then()
                    .statusCode(304)
                    .header("ETag", etag)
                    .header("Cache-Control", matchesPattern("no-cache, private|max-age=.*immutable"))
                    .body(emptyString());
            given().header("If-None-Match", "\"another\"").get(path).then().statusCode(200);
            for (String held : List.of("*", "W/" + etag, "\"another\", " + etag)) {
                given().header("If-None-Match", held)
                        .get(path)
                        .then()
                        .statusCode(304)
                        .header("ETag", etag)
                        .body(emptyString());
            }
            // a HEAD is answered as the GET would be, without its body (RFC 9110, 9.3.2)
            undocumented()
                    .head(path)
                    .then()
                    .statusCode(200)
                    .header("ETag", etag)
                    .body(emptyString());
            undocumented()
                    .header("If-None-Match", etag)
                    .head(path)
                    .then()
                    .statusCode(304)
                    .header("ETag", etag);
        }
    }

    /** The API document has no operations for HEAD, which goes with each GET. */
    private RequestSpecification undocumented() {
        return RestAssured.given().port(port());
    }

    @Test
    void theDocumentSaysSoOfEveryRead() {
        var paths = JsonMapper.shared()
                .readTree(given().get("/openapi.json").asString())
                .get("paths");
        var reads = paths.valueStream().filter(path -> path.has("get")).toList();
        assertThat(reads).hasSizeGreaterThan(12).allSatisfy(path -> {
            var read = path.get("get");
            assertThat(read.path("responses").has("304")).isTrue();
            assertThat(read.at("/responses/200/headers/ETag").isMissingNode()).isFalse();
            assertThat(read.path("parameters").toString()).contains("IfNoneMatch");
        });
    }

    @Test
    void failuresAndChangesAreNotTagged() {
        given().get("/v1/projects/nothing").then().statusCode(400).header("ETag", nullValue());
        given().header("If-None-Match", "*")
                .get("/v1/catalogues/nothing")
                .then()
                .statusCode(404);
        given(Demo.catalogue("x")).get("/v1/nothing").then().statusCode(404).header("ETag", nullValue());
    }

    /** What is refused says nothing of what would have been answered: neither its tag nor its pages. */
    @Test
    void answersThatAreRefusedAreNotTagged() {
        for (String path : List.of("/v1/projects", "/v1/catalogues/demo", "/v1/catalogues/demo/versions/1")) {
            given().accept("image/png")
                    .get(path)
                    .then()
                    .statusCode(406)
                    .header("ETag", nullValue())
                    .header("Link", nullValue())
                    .header("Accept", nullValue())
                    .header("Cache-Control", nullValue());
        }
        given().accept("nonsense")
                .get("/v1/projects")
                .then()
                .statusCode(406)
                .body("detail", equalTo("The header Accept is no list of media types."));
    }

    @Test
    void aCursorIsOfOneList() {
        String name = name("cursor").replace(' ', '-');
        for (int version = 1; version <= 3; version++) {
            given(Demo.catalogue(name).put("remark", "version " + version)).post("/v1/catalogues");
        }
        given(JsonMapper.shared().createObjectNode().put("name", name)).post("/v1/projects");
        String next = given().get("/v1/catalogues/{name}?limit=1", name).path("versions.next");
        String cursor = next.substring(next.indexOf("cursor=") + "cursor=".length());
        String same = "/v1/catalogues/" + name + "?limit=2&cursor=" + cursor;
        given().get(same).then().statusCode(200).body("versions.items.version", equalTo(List.of(2, 1)));
        for (String other : List.of("/v1/catalogues", "/v1/catalogues/demo", "/v1/projects")) {
            given().get(other + "?cursor=" + cursor)
                    .then()
                    .statusCode(400)
                    .body("errors.parameter", equalTo(List.of("cursor")));
        }
    }

    @Test
    void everyPagedListLinksToItsPages() {
        String name = name("paged").replace(' ', '-');
        for (int version = 1; version <= 2; version++) {
            given(Demo.catalogue(name).put("remark", "version " + version)).post("/v1/catalogues");
        }
        given().get("/v1/catalogues/{name}?limit=1", name)
                .then()
                .header("Link", containsString("rel=\"first\""))
                .header("Link", containsString("rel=\"next\""));
    }
}
