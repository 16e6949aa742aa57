package io.axiswright.probe;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.Axiswright;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The document of the service as it is released. */
@SpringBootTest(classes = Axiswright.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class WholeDocumentTest {

    @LocalServerPort
    private int port;

    private JsonNode document = JsonMapper.shared().nullNode();

    @BeforeEach
    void fetch() {
        document = JsonMapper.shared()
                .readTree(given().port(port)
                        .get("/openapi.json")
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString());
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        for (JsonNode reference : document.findValues("$ref")) {
            String pointer = reference.asString().substring(1);
            assertThat(document.at(pointer).isMissingNode()).as(pointer).isFalse();
        }
    }

    @Test
    void everySchemaIsOursAndEveryMemberIsDescribed() {
        for (Map.Entry<String, JsonNode> schema :
                document.at("/components/schemas").properties()) {
            for (Map.Entry<String, JsonNode> property :
                    schema.getValue().path("properties").properties()) {
                boolean described = property.getValue().has("description")
                        || property.getValue().has("const");
                assertThat(described)
                        .as(schema.getKey() + "." + property.getKey())
                        .isTrue();
            }
        }
    }

    @Test
    void pagesAreNamedByWhatTheyHold() {
        assertThat(document.at("/components/schemas/ProjectSummaryPage/properties/items/items/$ref")
                        .asString())
                .isEqualTo("#/components/schemas/ProjectSummary");
    }

    @Test
    void requestsAreClosed() {
        for (String name : List.of("SizingRequest", "Design", "Catalogue", "NewProject", "NewRevision")) {
            assertThat(document.at("/components/schemas/" + name + "/additionalProperties")
                            .asBoolean(true))
                    .as(name)
                    .isFalse();
        }
    }
}
