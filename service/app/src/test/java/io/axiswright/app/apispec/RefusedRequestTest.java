package io.axiswright.app.apispec;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;
import java.nio.charset.Charset;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Requests that fail before anybody looks at a design. */
class RefusedRequestTest extends RefusalTest {

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

    /** The message, the place and what would be accepted; a parameter left unread could send a revision to another branch. */
    @ParameterizedTest
    @CsvSource({
        "/v1/projects?limt=5, limt, UNKNOWN, 'cursor, limit'",
        "/v1/projects?limit=5&limit=6, limit, REPEATED, one",
        "/v1/catalogues/demo/versions/1?draft=, draft, UNKNOWN, no query parameter",
        "/v1/findings?page=2, page, UNKNOWN, no query parameter",
        "/problems?page=2, page, UNKNOWN, no query parameter"
    })
    void parametersNobodyReads(String path, String parameter, String code, String accepted) {
        problem(given().urlEncodingEnabled(false).get(path), 400, "INVALID_PARAMETER")
                .body("errors.parameter", equalTo(List.of(parameter)))
                .body("errors.code", equalTo(List.of(code)))
                .body("errors.accepted", equalTo(List.of(accepted)));
    }

    @Test
    void aBranchMisspelt() {
        problem(
                        given(sizing()).post("/v1/projects/" + UUID.randomUUID() + "/revisions?brunch=trial"),
                        400,
                        "INVALID_PARAMETER")
                .body("errors.parameter", equalTo(List.of("brunch")))
                .body("errors.accepted", equalTo(List.of("branch")));
        problem(given(sizing()).post("/v1/sizing/system?layout=fast"), 400, "INVALID_PARAMETER");
    }

    @Test
    void twoKeysForOneRequest() {
        problem(
                        given().contentType("application/json")
                                .headers("Idempotency-Key", "one", "Idempotency-Key", "two")
                                .body("{\"name\": \"Twice\"}")
                                .post("/v1/projects"),
                        400,
                        "INVALID_PARAMETER")
                .body("errors.header", equalTo(List.of("Idempotency-Key")))
                .body("errors.code", equalTo(List.of("REPEATED")));
    }

    @Test
    void formsAndMethodsThatAreNotServed() {
        problem(
                given().contentType("text/plain").body("hello").post("/v1/sizing/system"),
                415,
                "UNSUPPORTED_MEDIA_TYPE");
        problem(given(sizing()).accept("application/xml").post("/v1/sizing/duty"), 406, "NOT_ACCEPTABLE");
        problem(given().get("/v1/sizing/system"), 405, "METHOD_NOT_ALLOWED");
        problem(given().delete("/v1/projects"), 405, "METHOD_NOT_ALLOWED")
                .header("Allow", equalTo("GET,HEAD,OPTIONS,POST"));
    }

    /** RFC 5789, 3.1: wherever Accept-Patch stands, PATCH is allowed. */
    @Test
    void whatMayBePatchedIsSaid() {
        undocumented()
                .options("/v1/projects")
                .then()
                .statusCode(200)
                .header("Allow", containsString("POST"))
                .header("Accept-Patch", nullValue());
        undocumented()
                .options("/v1/projects/{id}/branches/main/latest", UUID.randomUUID())
                .then()
                .statusCode(200)
                .header("Allow", containsString("PATCH"))
                .header("Accept-Patch", containsString("application/json-patch+json"));
    }

    /** The API document has no operations for OPTIONS, and no paths with parameters. */
    private RequestSpecification undocumented() {
        return RestAssured.given().port(port()).urlEncodingEnabled(false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/v1/projects;a=b", "/v1/projects;a;b=c?limit=1", "/v1/catalogues;a/demo"})
    void parametersOfPaths(String path) {
        undocumented().get(path).then().statusCode(400).body("errors.parameter", equalTo(List.of("a")));
    }

    /** RFC 9110, 15.5.16: what is in a coding nobody undoes is refused for that, and not for what it looks like. */
    @Test
    void bodiesInAContentCoding() {
        problem(
                        given(JsonMapper.shared().createObjectNode().put("name", "zipped"))
                                .header("Content-Encoding", "gzip")
                                .post("/v1/projects"),
                        415,
                        "UNSUPPORTED_MEDIA_TYPE")
                .header("Accept-Encoding", equalTo("identity"))
                .body("errors.header", equalTo(List.of("Content-Encoding")));
        problem(
                given(sizing()).header("Content-Encoding", "br").post("/v1/sizing/system:batch"),
                415,
                "UNSUPPORTED_MEDIA_TYPE");
        given(sizing())
                .header("Content-Encoding", "identity")
                .post("/v1/sizing/duty")
                .then()
                .statusCode(200);
    }

    /** RFC 8259, 8.1: JSON that systems exchange is in UTF-8. */
    @ParameterizedTest
    @ValueSource(strings = {"UTF-16LE", "UTF-16BE", "UTF-16", "UTF-32LE", "UTF-32BE"})
    void bodiesThatAreNotInUtf8(String charset) {
        byte[] body = "{\"name\": \"wide\"}".getBytes(Charset.forName(charset));
        for (String path : List.of("/v1/projects", "/v1/sizing/duty", "/v1/sizing/system:batch")) {
            problem(given().contentType("application/json").body(body).post(path), 400, "MALFORMED_JSON");
        }
    }

    /** Other forms of the same tree would come past the rules by which JSON is read. */
    @ParameterizedTest
    @ValueSource(strings = {"application/yaml", "application/vnd.api+yaml", "application/cbor"})
    void formsLikeJson(String form) {
        String body = "name: a project\nnonsense: 1\n";
        for (String path : List.of("/v1/projects", "/v1/catalogues", "/v1/sizing/system", "/v1/sizing/conductors")) {
            var sent = given().config(RestAssured.config()
                    .encoderConfig(EncoderConfig.encoderConfig().encodeContentTypeAs(form, ContentType.TEXT)));
            problem(sent.contentType(form).body(body).post(path), 415, "UNSUPPORTED_MEDIA_TYPE")
                    .body("detail", endsWith("; it reads application/*+json, application/json."));
        }
        problem(given().accept(form).get("/v1/projects"), 406, "NOT_ACCEPTABLE");
        problem(given().accept(form).get("/problems"), 406, "NOT_ACCEPTABLE");
    }
}
