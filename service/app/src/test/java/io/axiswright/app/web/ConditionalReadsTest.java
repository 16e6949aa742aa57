package io.axiswright.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
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
                    .extract()
                    .header("ETag");
            given().header("If-None-Match", etag)
                    .get(path)
                    .then()
                    .statusCode(304)
                    .header("ETag", etag)
                    .body(emptyString());
            given().header("If-None-Match", "\"another\"").get(path).then().statusCode(200);
        }
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
        given(Demo.catalogue("x")).get("/v1/nothing").then().statusCode(404).header("ETag", nullValue());
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
