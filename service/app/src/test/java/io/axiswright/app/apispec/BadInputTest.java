package io.axiswright.app.apispec;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever is wrong with a request is said, with its place, and leaves nothing behind. */
class BadInputTest extends HttpTest {

    private static final List<String> TABLES = List.of("catalogue", "catalogue_version", "project", "revision");

    @Autowired
    private JdbcClient database;

    private List<Long> before = List.of();

    @BeforeEach
    void countRows() {
        before = rows();
    }

    @AfterEach
    void nothingIsStored() {
        assertThat(rows()).isEqualTo(before);
    }

    private List<Long> rows() {
        return TABLES.stream()
                .map(table -> database.sql("select count(*) from " + table)
                        .query(Long.class)
                        .single())
                .toList();
    }

    private static ObjectNode example(String name) {
        return (ObjectNode) JsonMapper.shared().readTree(SpecFiles.read(SpecFiles.example(name)));
    }

    private static ObjectNode sizing() {
        return example("SizingRequest.request.label-applicator");
    }

    private static ObjectNode catalogue() {
        return example("Catalogue.request.workshop-list");
    }

    private static ObjectNode at(ObjectNode root, String pointer) {
        return (ObjectNode) root.at(pointer);
    }

    private ValidatableResponse problem(Response answer, int status, String kind) {
        return answer.then()
                .statusCode(status)
                .contentType("application/problem+json")
                .body("status", equalTo(status))
                .body("code", equalTo(kind))
                .body("detail", startsWith(answer.jsonPath().getString("detail")));
    }

    private void fault(Response answer, String code, String pointer) {
        problem(answer, 422, "INVALID_DESIGN")
                .body("errors.pointer", hasItem("#" + pointer))
                .body("errors.find { it.pointer == '#" + pointer + "' }.code", equalTo(code));
    }

    private Response system(JsonNode body) {
        return given(body).post("/v1/sizing/system");
    }

    private RequestSpecification raw(String body) {
        return given().contentType("application/json").body(body);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[1,",
                "{\"a\":}",
                "nul",
                "{\"codeBasis\": NaN}",
                "{\"codeBasis\": Infinity}",
                "{'a': 1}",
                "{} {}",
                "\u0000"
            })
    void jsonThatIsNone(String body) {
        problem(raw(body).post("/v1/sizing/system"), 400, "MALFORMED_JSON");
        problem(raw(body).post("/v1/catalogues"), 400, "MALFORMED_JSON");
    }

    @ParameterizedTest
    @ValueSource(strings = {"null", "[]", "3", "\"text\"", "true"})
    void jsonOfAnotherForm(String body) {
        for (String path : List.of("/v1/sizing/duty", "/v1/sizing/conductors", "/v1/catalogues", "/v1/projects")) {
            fault(raw(body).post(path), body.equals("null") ? "MISSING" : "WRONG_TYPE", "");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/design/axes/0/gear, ratio, 0",
        "/design/axes/0/gear, ratio, -3",
        "/design/axes/0/gear, efficiency, 1.5",
        "/design/axes/0/mechanism/load, value, -1",
        "/design/axes/0/commandRate, value, 0",
        "/design/axes/0/cycle/segments/0/duration, value, 0",
        "/design/axes/0/cycle/segments/0/duration, value, 1e300",
        "/design/mains/voltage, value, -400",
        "/design/installation, groupedCircuits, 0",
        "/catalogue, version, 0"
    })
    void numbersThatMakeNoSense(String object, String member, double number) {
        ObjectNode body = sizing();
        at(body, object).put(member, number);
        if (number == Math.rint(number) && Math.abs(number) < 1000) {
            at(body, object).put(member, (int) number);
        }
        fault(system(body), "OUT_OF_RANGE", object + "/" + member);
    }

    @Test
    void numbersTooLargeForAnything() {
        String body = sizing().toString().replace("\"ratio\":5", "\"ratio\":1e999");
        assertThat(body).contains("1e999");
        fault(raw(body).post("/v1/sizing/system"), "OUT_OF_RANGE", "/design/axes/0/gear/ratio");
    }

    @Test
    void membersUnknownMissingAndOfTheWrongUnit() {
        ObjectNode unknown = sizing();
        at(unknown, "/design/axes/1").put("gearing", 3);
        fault(system(unknown), "UNKNOWN_MEMBER", "/design/axes/1/gearing");
        ObjectNode missing = sizing();
        at(missing, "/design").remove("mains");
        fault(system(missing), "MISSING", "/design/mains");
        ObjectNode unit = sizing();
        at(unit, "/design/axes/0/mechanism/load").put("unit", "stone");
        fault(system(unit), "WRONG_UNIT", "/design/axes/0/mechanism/load/unit");
        at(unit, "/design/axes/0/mechanism/load").put("unit", "m");
        fault(system(unit), "WRONG_UNIT", "/design/axes/0/mechanism/load/unit");
        ObjectNode basis = sizing().put("codeBasis", "HOUSE_RULES");
        fault(system(basis), "UNKNOWN_VALUE", "/codeBasis");
        ObjectNode kind = sizing();
        at(kind, "/design/axes/0/mechanism").put("kind", "LEVITATION");
        fault(system(kind), "UNKNOWN_VALUE", "/design/axes/0/mechanism/kind");
    }

    @Test
    void namesThatContradictEachOther() {
        ObjectNode twice = sizing();
        at(twice, "/design/axes/1").put("id", "label-feed");
        fault(system(twice), "DUPLICATE_ID", "/design/axes/1/id");
        ObjectNode zone = sizing();
        at(zone, "/design/axes/0").put("stopZone", "nowhere");
        fault(system(zone), "DANGLING_REFERENCE", "/design/axes/0/stopZone");
        ObjectNode place = sizing();
        at(place, "/design/controlPower").put("place", "nowhere");
        fault(system(place), "DANGLING_REFERENCE", "/design/controlPower/place");
        ObjectNode item = sizing();
        at(item, "/design/axes/0/drive").put("item", "drive-of-dreams");
        fault(system(item), "DANGLING_REFERENCE", "/design/axes/0/drive/item");
    }

    @ParameterizedTest
    @CsvSource({
        "topology, network",
        "control-power, network",
        "control-power, controlPower",
        "supply, installation",
        "bill-of-materials, installation",
        "system, network"
    })
    void partsThatAnEndpointNeeds(String endpoint, String part) {
        ObjectNode body = sizing();
        at(body, "/design").remove(part);
        if (part.equals("network")) {
            // its place is the network's
            at(body, "/design").remove("controlPower");
        }
        fault(given(body).post("/v1/sizing/" + endpoint), "MISSING", "/design/" + part);
    }

    @Test
    void cataloguesNamedTwiceOrNotAtAllOrUnknown() {
        ObjectNode none = sizing();
        none.remove("catalogue");
        fault(system(none), "MISSING", "/catalogue");
        ObjectNode two = sizing();
        two.set("inlineCatalogue", catalogue());
        fault(system(two), "INCONSISTENT", "/inlineCatalogue");
        ObjectNode unknown = sizing();
        at(unknown, "/catalogue").put("name", "nobody's");
        fault(system(unknown), "DANGLING_REFERENCE", "/catalogue");
        ObjectNode version = sizing();
        at(version, "/catalogue").put("version", 4711);
        fault(system(version), "DANGLING_REFERENCE", "/catalogue");
    }

    @Test
    void cataloguesThatContradictThemselves() {
        ObjectNode body = catalogue();
        var needs = (ArrayNode) body.at("/driveUnits/0/needs");
        ObjectNode need = needs.addObject().put("item", "nowhere");
        need.put("quantity", 1).put("kind", "REQUIRED").put("reason", "for the test");
        fault(given(body).post("/v1/catalogues"), "DANGLING_REFERENCE", "/driveUnits/0/needs/0/item");
        need.put("item", body.at("/driveUnits/0/id").asString());
        problem(given(body).post("/v1/catalogues"), 422, "INVALID_DESIGN").body("errors.code", hasItem("CYCLIC_NEEDS"));
        ObjectNode sentAlong = sizing();
        sentAlong.remove("catalogue");
        sentAlong.set("inlineCatalogue", body);
        problem(system(sentAlong), 422, "INVALID_DESIGN")
                .body("errors.pointer", hasItem(startsWith("#/inlineCatalogue/driveUnits/0")));
        fault(given(catalogue().put("currency", "XXL")).post("/v1/catalogues"), "UNKNOWN_VALUE", "/currency");
    }

    @Test
    void bodiesOutOfAllProportion() {
        String tenMegabytes = "{\"name\": \"" + "x".repeat(10_000_000) + "\"}";
        problem(raw(tenMegabytes).post("/v1/projects"), 413, "BODY_TOO_LARGE");
        ObjectNode body = sizing();
        var axes = (ArrayNode) body.at("/design/axes");
        axes.removeAll();
        Stream.generate(() -> "{}").limit(10_000).forEach(_ -> axes.addObject());
        fault(system(body), "WRONG_COUNT", "/design/axes");
        String deep = "[".repeat(100_000);
        problem(raw(deep).post("/v1/sizing/system"), 400, "MALFORMED_JSON");
    }

    @Test
    void revisionsOnAStateThatIsNot() {
        ObjectNode revision = example("addRevision.request.first-state");
        String id = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        before = rows();
        String path = "/v1/projects/" + id + "/revisions";
        problem(given(revision).post(path), 428, "PRECONDITION_REQUIRED")
                .body("errors.header", equalTo(List.of("If-Match")));
        for (String stale : List.of("\"stale\"", "stale", "", "W/\"stale\"", "\"")) {
            problem(given(revision).header("If-Match", stale).post(path), 412, "PRECONDITION_FAILED");
        }
        problem(
                given(revision).header("If-Match", "*").post("/v1/projects/" + UUID.randomUUID() + "/revisions"),
                404,
                "NOT_FOUND");
        at(revision, "/design/axes/0").put("stopZone", "nowhere");
        fault(given(revision).header("If-Match", "*").post(path), "DANGLING_REFERENCE", "/design/axes/0/stopZone");
    }

    @Test
    void addressesOfNothing() {
        String nobody = UUID.randomUUID().toString();
        for (String path : List.of(
                "/v1/projects/" + nobody,
                "/v1/projects/" + nobody + "/revisions",
                "/v1/projects/" + nobody + "/revisions/1",
                "/v1/projects/" + nobody + "/comparisons?from=1&to=2",
                "/v1/catalogues/nobody",
                "/v1/catalogues/nobody/versions/1",
                "/v1/catalogues/demo/versions/-1",
                "/v1/findings/NONE",
                "/problems/none",
                "/v1/nothing",
                "/error")) {
            problem(given().get(path), 404, "NOT_FOUND");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/v1/projects/no-key, id",
        "/v1/projects?limit=0, limit",
        "/v1/projects?limit=101, limit",
        "/v1/projects?limit=many, limit",
        "/v1/projects?cursor=%20, cursor",
        "/v1/projects?cursor=nonsense, cursor",
        "/v1/catalogues/demo/versions/first, version",
        "/v1/catalogues/demo/versions/99999999999, version",
        "/v1/projects/0197f3a2-0000-7000-8000-000000000000/comparisons?from=1, to",
        "/v1/projects/0197f3a2-0000-7000-8000-000000000000/comparisons?from=1&to=x, to"
    })
    void parametersWithoutMeaning(String path, String parameter) {
        problem(given().urlEncodingEnabled(false).get(path), 400, "INVALID_PARAMETER")
                .body("errors.parameter", equalTo(List.of(parameter)));
    }

    @Test
    void formsAndMethodsThatAreNotServed() {
        problem(
                given().contentType("text/plain").body("hello").post("/v1/sizing/system"),
                415,
                "UNSUPPORTED_MEDIA_TYPE");
        problem(given(sizing()).accept("application/xml").post("/v1/sizing/duty"), 406, "NOT_ACCEPTABLE");
        problem(given().get("/v1/sizing/system"), 405, "METHOD_NOT_ALLOWED");
        problem(given().delete("/v1/projects"), 405, "METHOD_NOT_ALLOWED");
    }
}
