package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.axiswright.app.store.Documents;
import io.axiswright.app.support.Demo;
import io.axiswright.engine.design.Design;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class ProjectApiTest extends ProjectFixture {

    @Autowired
    private RevisionReader reader;

    @Test
    void opensAProjectAndShowsIt() {
        String name = name("Packing cell");
        var opened = open(name);
        String location = opened.extract().header("Location");

        given().get(location)
                .then()
                .statusCode(200)
                .header("ETag", opened.extract().header("ETag"))
                .body("name", equalTo(name))
                .body("latest", nullValue())
                .body("etag", equalTo(opened.extract().header("ETag")));
        assertThat(UUID.fromString(opened.extract().path("id")).version()).isEqualTo(7);
    }

    @Test
    void storesARevisionWithAllThatBelongsToIt() {
        String project = openAndGetId();
        var added = add(project, etag(project), revision("first")).statusCode(201);
        String etag = added.extract().header("ETag");
        assertThat(etag(project)).isEqualTo(etag);

        var served = given().get(added.extract().header("Location")).then().statusCode(200);
        served.header("ETag", etag)
                .header("Cache-Control", containsString("immutable"))
                .body("number", equalTo(1))
                .body("project", equalTo(project))
                .body("message", equalTo("first"))
                .body("author", equalTo("tester"))
                .body("codeBasis", equalTo("IEC_60204_1"))
                .body("catalogue.version", equalTo(1))
                .body("engineVersion", equalTo("stand-in"))
                .body("buildable", equalTo(true))
                .body("result.billOfMaterials", notNullValue());
        assertThat('"' + Documents.digest(served.extract().asByteArray()) + '"').isEqualTo(etag);
        given().header("If-None-Match", etag)
                .get(added.extract().header("Location"))
                .then()
                .statusCode(304);
    }

    @Test
    void readsBackTheVeryDesignThatWasSent() {
        String project = openAndGetId();
        var sent = revision("exact");
        add(project, etag(project), sent).statusCode(201);

        StoredRevision stored = reader.read(UUID.fromString(project), 1);

        assertThat(stored.design())
                .isEqualTo(Documents.read(JsonMapper.shared().writeValueAsBytes(sent.get("design")), Design.class));
        assertThat(stored.etag()).isEqualTo(etag(project));
    }

    @Test
    void asksForTheStateARevisionBuildsOn() {
        String project = openAndGetId();
        String opened = etag(project);
        add(project, null, revision("unguarded")).statusCode(428);
        add(project, "\"other\"", revision("stale")).statusCode(412).header("ETag", opened);
        add(project, "W/" + opened, revision("weak")).statusCode(412);
        add(project, "\"other\", " + opened, revision("one of two")).statusCode(201);
        add(project, opened, revision("lost update")).statusCode(412).header("ETag", etag(project));
        add(project, "*", revision("whatever is there")).statusCode(201).body("number", equalTo(2));
    }

    @Test
    void listsRevisionsNewestFirst() {
        String project = openAndGetId();
        for (int number = 1; number <= 3; number++) {
            add(project, etag(project), revision("number " + number)).statusCode(201);
        }

        var page = given().get("/v1/projects/{id}/revisions?limit=2", project)
                .then()
                .statusCode(200);
        page.body("items.number", equalTo(List.of(3, 2)))
                .body("items[0].message", equalTo("number 3"))
                .body("items[0].etag", equalTo(etag(project)));
        given().urlEncodingEnabled(false)
                .get(page.extract().<String>path("next"))
                .then()
                .body("items", hasSize(1))
                .body("items[0].number", equalTo(1))
                .body("next", nullValue());
    }

    @Test
    void refusesARevisionWithoutMeaningAndStoresNothing() {
        String project = openAndGetId();
        var revision = (ObjectNode) revision("broken");
        ((ObjectNode) revision.at("/design/axes/0")).put("stopZone", "nowhere");

        add(project, etag(project), revision)
                .statusCode(422)
                .body(containsString("/design/axes/0/stopZone"))
                .body(containsString("DANGLING_REFERENCE"));
        add(project, etag(project), Demo.revision("no catalogue", "nobody's", 1))
                .statusCode(422)
                .body(containsString("/catalogue"));
        given().get("/v1/projects/{id}/revisions", project).then().body("items", hasSize(0));
    }

    @Test
    void knowsWhatItHasNot() {
        String nobody = UUID.randomUUID().toString();
        given().get("/v1/projects/{id}", nobody).then().statusCode(404);
        given().get("/v1/projects/{id}/revisions", nobody).then().statusCode(404);
        given().get("/v1/projects/{id}/revisions/1", nobody).then().statusCode(404);
        add(nobody, "\"any\"", revision("to nobody")).statusCode(404);
        given().get("/v1/projects/not-a-key").then().statusCode(400);
    }
}
