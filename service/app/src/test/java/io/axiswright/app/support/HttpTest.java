package io.axiswright.app.support;

import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.util.UUID;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;

/** A test that talks to the running service; all of them share one application and one database. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "spring.jpa.properties.hibernate.generate_statistics=true")
public abstract class HttpTest {

    @LocalServerPort
    private int port;

    /** A request to the service. */
    protected RequestSpecification given() {
        return RestAssured.given().port(port);
    }

    /** A request with a JSON body. */
    protected RequestSpecification given(JsonNode body) {
        return given().contentType(ContentType.JSON).body(body.toString());
    }

    /** A name nobody else in the database has. */
    protected static String name(String what) {
        return what + " " + UUID.randomUUID();
    }
}
