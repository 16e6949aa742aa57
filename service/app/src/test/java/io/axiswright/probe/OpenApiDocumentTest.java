package io.axiswright.probe;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.app.support.SchemaChecker;
import io.axiswright.app.wire.RandomRecords;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.Design;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

@SpringBootTest(classes = ProbeApplication.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class OpenApiDocumentTest {

    @LocalServerPort
    private int port;

    private String text = "";
    private JsonNode document = JsonMapper.shared().nullNode();

    @BeforeEach
    void fetch() {
        text = given().port(port)
                .get("/openapi.json")
                .then()
                .statusCode(200)
                .extract()
                .asString();
        document = JsonMapper.shared().readTree(text);
    }

    private JsonNode schema(String name) {
        return document.at("/components/schemas/" + name);
    }

    @Test
    void whatWeWriteIsValidByTheSchemaAndWhatWeRefuseIsNot() {
        var validator = new SchemaChecker(document);
        for (long seed = 0; seed < 40; seed++) {
            for (Class<?> type : List.of(Design.class, Catalogue.class)) {
                JsonNode json = JsonMapper.shared().readTree(RecordWriter.write(new RandomRecords(seed).next(type)));
                assertThat(validator.faults(type.getSimpleName(), json))
                        .as("seed %d: %s", seed, json)
                        .isEmpty();
                ((ObjectNode) json).put("unheardOf", 1);
                assertThat(validator.faults(type.getSimpleName(), json))
                        .as("seed %d", seed)
                        .isNotEmpty();
            }
        }
    }

    @Test
    void answersAreValidByTheirSchema() {
        var validator = new SchemaChecker(document);
        byte[] json = RecordWriter.write(new RandomRecords(3).next(Design.class));
        String echo = given().port(port)
                .contentType("application/json")
                .body(json)
                .post("/probe/designs")
                .asString();
        assertThat(validator.faults("Echo", JsonMapper.shared().readTree(echo))).isEmpty();
        String problem = given().port(port)
                .contentType("application/json")
                .body("{}")
                .post("/probe/designs")
                .asString();
        assertThat(validator.faults("Problem", JsonMapper.shared().readTree(problem)))
                .isEmpty();
        String findings = given().port(port).get("/v1/findings").asString();
        assertThat(validator.faults("FindingPageList", JsonMapper.shared().readTree(findings)))
                .isEmpty();
    }

    @Test
    void schemasSayWhatTheReaderDemands() {
        JsonNode axis = schema("Axis");
        assertThat(axis.at("/additionalProperties").asBoolean(true)).isFalse();
        assertThat(axis.at("/required").valueStream().map(JsonNode::asString))
                .containsExactlyInAnyOrder("id", "mechanism", "cycle", "position", "commandRate", "drive");
        assertThat(axis.at("/description").asString()).isEqualTo("One controlled motion and all that makes it.");
        assertThat(axis.at("/properties/commandRate/$ref").asString()).isEqualTo("#/components/schemas/Frequency");
        assertThat(axis.at("/properties/commandRate/description").asString())
                .isEqualTo("commands it is sent per second (at least 0.000001 and at most 100000 Hz)");
        assertThat(axis.at("/properties/id/maxLength").asInt()).isEqualTo(200);
        assertThat(axis.at("/properties/description/maxLength").asInt()).isEqualTo(2000);

        assertThat(schema("Cycle").at("/properties/segments/minItems").asInt()).isEqualTo(1);
        assertThat(schema("Cycle").at("/properties/segments/maxItems").asInt()).isEqualTo(1000);
        assertThat(schema("Gear").at("/properties/ratio/minimum").asDouble()).isEqualTo(0.000001);
        assertThat(schema("Gear").at("/properties/ratio/maximum").asDouble()).isEqualTo(10000);
        assertThat(schema("Place").at("/properties/maxGateways/type").asString())
                .isEqualTo("integer");

        JsonNode mechanism = schema("Mechanism");
        assertThat(mechanism.at("/oneOf")).hasSize(10);
        assertThat(mechanism.at("/discriminator/propertyName").asString()).isEqualTo("kind");
        assertThat(mechanism.at("/discriminator/mapping/SCREW").asString()).isEqualTo("#/components/schemas/Screw");
        assertThat(schema("Screw").at("/properties/kind/const").asString()).isEqualTo("SCREW");
        assertThat(schema("Screw").at("/required").valueStream().map(JsonNode::asString))
                .contains("kind");

        assertThat(schema("Payload").at("/oneOf")).hasSize(2);
        assertThat(schema("Torque").at("/properties/unit/enum").valueStream().map(JsonNode::asString))
                .containsExactly("N.m", "mN.m", "lbf.in", "lbf.ft", "ozf.in");
        assertThat(schema("Torque").at("/description").asString()).contains("N.m newton metre (NU)");
        assertThat(schema("Site").at("/properties/ambient/description").asString())
                .endsWith("(at least 233.15 and at most 343.15 K)");
        assertThat(schema("Accessory").at("/properties/price/$ref").asString()).isEqualTo("#/components/schemas/Money");
        assertThat(schema("CodeBasis").at("/description").asString()).contains("NFPA_79: North America");
    }

    @Test
    void whatOnlyWeWriteMayGrow() {
        JsonNode echo = schema("Echo");
        assertThat(echo.has("additionalProperties")).isFalse();
        assertThat(echo.at("/required").valueStream().map(JsonNode::asString))
                .containsExactlyInAnyOrder("design", "findings");
        assertThat(schema("Finding").has("additionalProperties")).isFalse();
        assertThat(schema("FindingCode").has("enum")).isFalse();
    }

    @Test
    void operationsListTheirProblems() {
        JsonNode responses = document.at("/paths/~1probe~1designs/post/responses");
        assertThat(new TreeSet<>(responses.propertyNames()))
                .containsExactly("200", "400", "406", "409", "413", "415", "422", "500");
        assertThat(responses.at("/422/$ref").asString()).isEqualTo("#/components/responses/Problem422");
        assertThat(document.at("/components/responses/Problem422/content/application~1problem+json/examples"))
                .hasSize(2);
        assertThat(document.at("/paths/~1probe~1designs/post/summary").asString("")
                        + document.at("/paths/~1probe~1designs/post/description")
                                .asString(""))
                .contains("Echoes a design");
    }

    @Test
    void examplesOfTheClassPathAreNamed() {
        JsonNode media = document.at("/paths/~1probe~1maps/post/requestBody/content/application~1json");
        assertThat(media.at("/examples/two-numbers/value/b").asInt()).isEqualTo(2);
        JsonNode answer = document.at("/paths/~1probe~1maps/post/responses/200/content/application~1json");
        assertThat(answer.at("/examples/two-numbers/value/a").asInt()).isEqualTo(1);
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        for (JsonNode reference : document.findValues("$ref")) {
            String pointer = reference.asString().substring(1);
            assertThat(document.at(pointer).isMissingNode()).as(pointer).isFalse();
        }
    }

    @Test
    void everyMemberIsDescribed() {
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
    void theDocumentIsTheSameEachTimeAndKeepsItsOrder() {
        assertThat(given().port(port).get("/openapi.json").asString()).isEqualTo(text);
        assertThat(document.at("/openapi").asString()).startsWith("3.1");
        assertThat(List.copyOf(document.at("/paths").propertyNames())).isSorted();
        assertThat(List.copyOf(document.at("/components/schemas").propertyNames()))
                .isSorted();
        assertThat(document.at("/tags").valueStream().map(tag -> tag.get("name").asString()))
                .containsExactly("Findings", "Problems", "probe-controller");
        assertThat(document.at("/servers/0/url").asString()).isEqualTo("/");
    }

    @Test
    void thePageOfTheDocumentIsServed() {
        given().port(port).get("/docs").then().statusCode(200).contentType("text/html");
    }
}
