package io.axiswright.app.support;

import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/**
 * A test that talks to the running service; all of them share one application and one database. All they say to each other is
 * held against the API document.
 */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.jpa.properties.hibernate.generate_statistics=true")
public abstract class HttpTest {

    private static @Nullable ApiDocument document;

    @LocalServerPort
    private int port;

    /** Where the service listens on this machine. */
    protected int port() {
        return port;
    }

    /** The API document; the same whatever stands in for parts of the service, so it is fetched once. */
    protected ApiDocument document() {
        return document(port);
    }

    private static synchronized ApiDocument document(int port) {
        if (document == null) {
            document = new ApiDocument(
                    RestAssured.given().port(port).get("/openapi.json").asString());
        }
        return document;
    }

    /** A request to the service. */
    protected RequestSpecification given() {
        return given(document());
    }

    /** A request to the service under a document. */
    RequestSpecification given(ApiDocument document) {
        return RestAssured.given().port(port).filter(new DocumentedTraffic(document, true));
    }

    /** A request with a JSON body. */
    protected RequestSpecification given(JsonNode body) {
        return given().contentType(ContentType.JSON).body(body.toString());
    }

    /** A request with a JSON body of which the service answers some parts though the document does not allow others. */
    protected RequestSpecification givenInParts(JsonNode body) {
        return RestAssured.given()
                .port(port)
                .filter(new DocumentedTraffic(document(), false))
                .contentType(ContentType.JSON)
                .body(body.toString());
    }

    /** A name nobody else in the database has. */
    protected static String name(String what) {
        return what + " " + UUID.randomUUID();
    }
}
