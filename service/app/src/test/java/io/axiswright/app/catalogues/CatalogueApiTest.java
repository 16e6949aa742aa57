package io.axiswright.app.catalogues;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.axiswright.app.store.Documents;
import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ObjectNode;

class CatalogueApiTest extends HttpTest {

    @Test
    void storesVersionsAndServesThemAsStored() {
        String name = name("versions");
        var first = given(Demo.catalogue(name)).post("/v1/catalogues").then().statusCode(201);
        String location = first.extract().header("Location");
        String etag = first.extract().header("ETag");
        assertThat(location).endsWith("/v1/catalogues/" + name.replace(" ", "%20") + "/versions/1");

        var served = given().urlEncodingEnabled(false).get(location).then().statusCode(200);
        served.header("ETag", etag)
                .header("Cache-Control", allOf(containsString("private"), containsString("immutable")))
                .contentType("application/json")
                .body("name", equalTo(name));
        assertThat('"' + Documents.digest(served.extract().asByteArray()) + '"').isEqualTo(etag);
        given().urlEncodingEnabled(false)
                .header("If-None-Match", etag)
                .get(location)
                .then()
                .statusCode(304)
                .header("ETag", etag);
    }

    @Test
    void storesNothingNewWhenNothingChanged() {
        ObjectNode catalogue = Demo.catalogue(name("same"));
        given(catalogue).post("/v1/catalogues").then().statusCode(201);

        given(catalogue).post("/v1/catalogues").then().statusCode(200).body("version", equalTo(1));
        given(catalogue.put("remark", "changed")).post("/v1/catalogues").then().statusCode(201);
        given(catalogue.put("remark", "changed"))
                .post("/v1/catalogues")
                .then()
                .statusCode(200)
                .body("version", equalTo(2));
    }

    @Test
    void listsCataloguesAndTheirVersionsByPages() {
        ObjectNode catalogue = Demo.catalogue(name("pages"));
        for (int version = 1; version <= 3; version++) {
            given(catalogue.put("remark", "version " + version))
                    .post("/v1/catalogues")
                    .then()
                    .statusCode(201);
        }
        String name = catalogue.get("name").asString();

        var page = given().queryParam("limit", 2)
                .get("/v1/catalogues/{name}", name)
                .then();
        page.statusCode(200).body("latest.version", equalTo(3)).body("versions.items.version", equalTo(List.of(3, 2)));
        given().urlEncodingEnabled(false)
                .get(page.extract().<String>path("versions.next"))
                .then()
                .statusCode(200)
                .body("versions.items.version", equalTo(List.of(1)))
                .body("versions.next", nullValue());
        assertThat(allCatalogueNames()).contains(name).doesNotHaveDuplicates();
    }

    private List<String> allCatalogueNames() {
        List<String> names = new ArrayList<>();
        String next = "/v1/catalogues?limit=2";
        while (next != null) {
            var page = given().urlEncodingEnabled(false).get(next).then().statusCode(200);
            names.addAll(page.extract().path("items.name"));
            next = page.extract().path("next");
            if (next != null) {
                page.header("Link", containsString("rel=\"first\""));
            }
        }
        return names;
    }

    @Test
    void refusesACatalogueThatContradictsItselfWithAllItsFaults() {
        ObjectNode catalogue = Demo.catalogue("not/a/name");
        ((ObjectNode) catalogue.at("/driveUnits/0/needs/0")).put("item", "nowhere");
        String id = catalogue.at("/driveUnits/0/id").asString();
        ((ObjectNode) catalogue.at("/driveUnits/1")).put("id", id);

        given(catalogue)
                .post("/v1/catalogues")
                .then()
                .statusCode(422)
                .body(containsString("/name"))
                .body(containsString("/driveUnits/0/needs/0/item"))
                .body(containsString("/driveUnits/1/id"))
                .body(containsString("DANGLING_REFERENCE"))
                .body(containsString("DUPLICATE_ID"));
    }

    @Test
    void knowsWhatItHasNot() {
        given().get("/v1/catalogues/{name}", name("none")).then().statusCode(404);
        given().get("/v1/catalogues/{name}/versions/1", name("none")).then().statusCode(404);
        given().get("/v1/catalogues?cursor=nonsense").then().statusCode(400);
        given().get("/v1/catalogues?limit=0").then().statusCode(400);
        given().get("/v1/catalogues?limit=101").then().statusCode(400);
    }

    @Test
    void numbersVersionsWithoutGapsWhenManyStoreAtOnce() throws Exception {
        String name = name("many");
        List<Callable<Integer>> writers = IntStream.range(0, 8)
                .<Callable<Integer>>mapToObj(k ->
                        () -> given(Demo.catalogue(name).put("remark", "writer " + k))
                                .post("/v1/catalogues")
                                .then()
                                .statusCode(201)
                                .extract()
                                .path("version"))
                .toList();

        try (var threads = Executors.newFixedThreadPool(8)) {
            List<Integer> versions = new ArrayList<>();
            for (var done : threads.invokeAll(writers)) {
                versions.add(done.get());
            }
            Collections.sort(versions);
            assertThat(versions).containsExactly(1, 2, 3, 4, 5, 6, 7, 8);
        }
    }
}
