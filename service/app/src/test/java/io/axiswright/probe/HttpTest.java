package io.axiswright.probe;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.axiswright.app.wire.RandomRecords;
import io.axiswright.app.wire.RecordWriter;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.design.Design;
import io.restassured.builder.RequestSpecBuilder;
import io.restassured.http.ContentType;
import io.restassured.response.ValidatableResponse;
import io.restassured.specification.RequestSpecification;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.SpringBootTest.WebEnvironment;
import org.springframework.boot.test.web.server.LocalServerPort;

@SpringBootTest(classes = ProbeApplication.class, webEnvironment = WebEnvironment.RANDOM_PORT)
class HttpTest {

    @LocalServerPort
    private int port;

    private RequestSpecification service = given();

    @BeforeEach
    void service() {
        service = new RequestSpecBuilder()
                .setPort(port)
                .setContentType(ContentType.JSON)
                .build();
    }

    private ValidatableResponse post(String path, String body) {
        return post(path, body.getBytes(StandardCharsets.UTF_8));
    }

    private ValidatableResponse post(String path, byte[] body) {
        return given(service).body(body).post(path).then();
    }

    private static void isProblem(ValidatableResponse answer, int status, String code) {
        answer.statusCode(status)
                .contentType("application/problem+json")
                .body(
                        "type",
                        equalTo("/problems/"
                                + code.toLowerCase(java.util.Locale.ROOT).replace('_', '-')))
                .body("title", notNullValue())
                .body("status", is(status))
                .body("detail", notNullValue())
                .body("instance", notNullValue())
                .body("code", equalTo(code));
        String body = answer.extract().asString();
        assertThat(body).doesNotContain("Exception", "springframework", "io.axiswright", "jackson", "secret");
    }

    @Test
    void aDesignIsReadAndAnsweredInTheFormOfTheWire() {
        Design design = new RandomRecords(1).next(Design.class);
        byte[] json = RecordWriter.write(design);
        byte[] answer = post("/probe/designs", json)
                .statusCode(200)
                .contentType(ContentType.JSON)
                .body("findings[0].code", equalTo("CONTROL-VOLTAGE-LOW"))
                .body("findings[0].value.unit", equalTo("V"))
                .body("findings[0].value.value", equalTo(19.25f))
                .extract()
                .asByteArray();
        String sent = new String(json, StandardCharsets.UTF_8);
        assertThat(new String(answer, StandardCharsets.UTF_8)).startsWith("{\"design\":" + sent);
    }

    @Test
    void aCatalogueIsEchoedByteForByte() {
        byte[] json = RecordWriter.write(new RandomRecords(2).next(Catalogue.class));
        byte[] answer = given(service)
                .body(json)
                .put("/probe/catalogues")
                .then()
                .statusCode(200)
                .extract()
                .asByteArray();
        assertThat(answer).isEqualTo(json);
    }

    @Test
    void threeFaultsAreAnsweredAtOnce() {
        var answer = post("/probe/designs", """
                {"name": " ", "site": {"ambient": {"value": 40, "unit": "m"}}, "axes": [], "a b/c": 1}""");
        isProblem(answer, 422, "INVALID_DESIGN");
        answer.body("instance", equalTo("/probe/designs"))
                .body("traceId", nullValue())
                .body(
                        "errors.pointer",
                        contains(
                                "/name",
                                "/site/ambient/unit",
                                "/site/enclosureAmbient",
                                "/site/altitude",
                                "/axes",
                                "/a b~1c",
                                "/mains"))
                .body("errors.code", hasItem("WRONG_UNIT"))
                .body("errors.find { it.code == 'WRONG_UNIT' }.accepted", equalTo("Cel, K or degF"))
                .body("errors.find { it.code == 'UNKNOWN_MEMBER' }.accepted", containsString("stopZones"))
                .body("errors.detail", everyItem(notNullValue()));
    }

    @Test
    void whatIsNoJsonIs400() {
        var nan = post("/probe/designs", "{\"name\": NaN}");
        isProblem(nan, 400, "MALFORMED_JSON");
        nan.body("detail", containsString("line 1"));
        isProblem(post("/probe/designs", "[".repeat(100_000)), 400, "MALFORMED_JSON");
        isProblem(post("/probe/designs", "{"), 400, "MALFORMED_JSON");
        isProblem(given(service).post("/probe/designs").then(), 400, "MALFORMED_JSON");
        isProblem(post("/probe/maps", "{\"a\": }"), 400, "MALFORMED_JSON");
        isProblem(post("/probe/designs", new byte[] {'"', (byte) 0xff, '"'}), 400, "MALFORMED_JSON");
        isProblem(post("/probe/maps", "{\"a\": \"b\"}"), 422, "INVALID_DESIGN");
    }

    @Test
    void hugeNumbersAndRepeatedMembersAre422() {
        var huge = post("/probe/designs", "{\"name\": 1e999, \"name\": \"a\"}");
        isProblem(huge, 422, "INVALID_DESIGN");
        huge.body("errors.code", hasItem("WRONG_TYPE")).body("errors.code", hasItem("DUPLICATE_MEMBER"));
    }

    @Test
    void tenMegabytesAreRefusedWhetherAnnouncedOrNot() throws Exception {
        byte[] large = new byte[10 << 20];
        Arrays.fill(large, (byte) ' ');
        isProblem(post("/probe/designs", large), 413, "BODY_TOO_LARGE");
        var chunked = HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/probe/designs"))
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(large)))
                .build();
        try (var client =
                HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build()) {
            var answer = client.send(chunked, HttpResponse.BodyHandlers.ofString());
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.body()).contains("BODY_TOO_LARGE", "4194304");
        }
    }

    @Test
    void aHundredFaultsAreListed() {
        String stopZones = "{}" + ",{}".repeat(99);
        post("/probe/designs", "{\"stopZones\": [" + stopZones + "]}")
                .statusCode(422)
                .body("errors", hasSize(100))
                .body("detail", containsString("404 faults; the first 100 are listed, 304 more are not"));
    }

    @Test
    void mediaTypesMethodsAndPathsAreJudged() {
        isProblem(
                given().port(port)
                        .contentType("text/plain")
                        .body("x")
                        .post("/probe/designs")
                        .then(),
                415,
                "UNSUPPORTED_MEDIA_TYPE");
        isProblem(given(service).accept("image/png").get("/v1/findings").then(), 406, "NOT_ACCEPTABLE");
        var method = given(service).delete("/probe/designs").then();
        isProblem(method, 405, "METHOD_NOT_ALLOWED");
        method.header("Allow", "OPTIONS,POST");
        isProblem(given(service).get("/nowhere").then(), 404, "NOT_FOUND");
        isProblem(given(service).get("/error").then(), 404, "NOT_FOUND");
        isProblem(given(service).accept("text/html").get("/nowhere").then(), 404, "NOT_FOUND");
    }

    @Test
    void parametersAndHeadersAreNamed() {
        var number = given(service)
                .header("Probe-Size", 1)
                .get("/probe/parameters/x?basis=NFPA_79")
                .then();
        isProblem(number, 400, "INVALID_PARAMETER");
        number.body("errors[0].parameter", equalTo("number")).body("errors[0].accepted", equalTo("a whole number"));
        var basis = given(service)
                .header("Probe-Size", 1)
                .get("/probe/parameters/1?basis=X")
                .then();
        isProblem(basis, 400, "INVALID_PARAMETER");
        basis.body("errors[0].accepted", equalTo("NFPA_79, IEC_60204_1"));
        var missing = given(service)
                .header("Probe-Size", 1)
                .get("/probe/parameters/1")
                .then();
        isProblem(missing, 400, "INVALID_PARAMETER");
        missing.body("errors[0].parameter", equalTo("basis")).body("errors[0].code", equalTo("MISSING"));
        var header = given(service).get("/probe/parameters/1?basis=NFPA_79").then();
        isProblem(header, 400, "INVALID_PARAMETER");
        header.body("errors[0].header", equalTo("Probe-Size"));
        var wrong = given(service)
                .header("Probe-Size", "x")
                .get("/probe/parameters/1?basis=NFPA_79")
                .then();
        isProblem(wrong, 400, "INVALID_PARAMETER");
        wrong.body("errors[0].header", equalTo("Probe-Size"));
    }

    @Test
    void failuresOfOurOwnMakingCarryTheirHeaders() {
        isProblem(given(service).get("/probe/failures/not-found").then(), 404, "NOT_FOUND");
        isProblem(given(service).get("/probe/failures/conflict").then(), 409, "CONFLICT");
        var stale = given(service).get("/probe/failures/precondition-failed").then();
        isProblem(stale, 412, "PRECONDITION_FAILED");
        stale.header("ETag", "\"abc\"");
        var required =
                given(service).get("/probe/failures/precondition-required").then();
        isProblem(required, 428, "PRECONDITION_REQUIRED");
        required.body("errors[0].header", equalTo("If-Match"));
        var busy = given(service).get("/probe/failures/unavailable").then();
        isProblem(busy, 503, "UNAVAILABLE");
        busy.header("Retry-After", "3");
        isProblem(given(service).get("/probe/failures/status").then(), 403, "FORBIDDEN");
    }

    @Test
    void anUnforeseenFailureShowsATraceAndNothingElse() {
        var failure = given(service).get("/probe/failures/other").then();
        isProblem(failure, 500, "INTERNAL");
        failure.body("traceId", notNullValue());
    }

    @Test
    void everyProblemTypeIsDescribed() {
        for (String type :
                given(service).get("/problems").then().extract().<java.util.List<String>>path("items.type")) {
            given(service)
                    .get(type)
                    .then()
                    .statusCode(200)
                    .body("type", equalTo(type))
                    .body("description", not(equalTo("")));
        }
        isProblem(given(service).get("/problems/nothing").then(), 404, "NOT_FOUND");
    }

    @Test
    void theCatalogueOfFindingsIsServed() {
        given(service)
                .get("/v1/findings")
                .then()
                .statusCode(200)
                .body("items.find { it.code == 'DUTY-NO-DRIVE-UNIT' }.severity", equalTo("VIOLATION"))
                .body("items.remedy", everyItem(notNullValue()));
        given(service).get("/v1/findings/DUTY-NO-DRIVE-UNIT").then().statusCode(200);
        isProblem(given(service).get("/v1/findings/X").then(), 404, "NOT_FOUND");
    }

    @Test
    void whatTheContainerRefusesIsAProblemToo() {
        var answer = given(service).urlEncodingEnabled(false).get("/v1/catalogues/%00");
        isProblem(answer.then(), 400, "BAD_REQUEST");
        answer.then().body("instance", equalTo("/v1/catalogues/%00"));
    }

    @Test
    void whatTheContainerRefusesShowsNothingOfItself() throws Exception {
        assertThat(answer("GET /a\\b|{ HTTP/1.1")).startsWith("HTTP/1.1 400").doesNotContain("Exception", "org.apache");
    }

    /** A version of HTTP nobody speaks is no failure of the service, though its status says 5xx (RFC 9110, 15.6.6). */
    @Test
    void anUnknownVersionIsTheCallersFault() throws Exception {
        assertThat(answer("GET /v1/findings HTTP/3.7"))
                .startsWith("HTTP/1.1 505")
                .contains("\"code\":\"BAD_REQUEST\"")
                .doesNotContain("traceId");
    }

    /** The answer to a request line as no client would send it. */
    private String answer(String requestLine) throws Exception {
        try (var socket = new Socket("localhost", port);
                OutputStream out = socket.getOutputStream();
                InputStream in = socket.getInputStream()) {
            out.write((requestLine + "\r\nHost: localhost\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
