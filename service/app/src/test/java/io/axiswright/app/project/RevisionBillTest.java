package io.axiswright.app.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** With the real engine: the documents of a stored bill. */
class RevisionBillTest extends HttpTest {

    private static final Path EXAMPLES = Path.of("..", "..", "api-spec", "examples");
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private static ObjectNode example(String name) throws Exception {
        return (ObjectNode) JsonMapper.shared().readTree(Files.readString(EXAMPLES.resolve(name + ".json")));
    }

    /** A project with one revision whose bill is sold at a fifth of the sale price. */
    private String project() throws Exception {
        String project = given(example("openProject.request.label-applicator"))
                .post("/v1/projects")
                .path("id");
        ObjectNode revision = example("addRevision.request.first-state");
        ((ObjectNode) revision.get("design")).putArray("margins").addObject().put("margin", 0.2);
        given(revision)
                .header("If-Match", "*")
                .post("/v1/projects/{id}/revisions", project)
                .then()
                .statusCode(201);
        return project;
    }

    private Response bill(String project, String accept) {
        Response answer = given().accept(accept).get("/v1/projects/{id}/revisions/1/bill-of-materials", project);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    @Test
    void isTheBillTheRevisionHas() throws Exception {
        String project = project();
        JsonNode revision = JsonMapper.shared()
                .readTree(given().get("/v1/projects/{id}/revisions/1", project).asByteArray());

        assertThat(JsonMapper.shared()
                        .readTree(bill(project, "application/json").asByteArray()))
                .isEqualTo(revision.at("/result/billOfMaterials"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "text/csv", XLSX, "application/xml"})
    void eachFormIsTheSameBytesAndUnchangedForWhoHoldsIt(String accept) throws Exception {
        String project = project();
        Response first = bill(project, accept);

        assertThat(first.contentType()).startsWith(accept);
        assertThat(first.header("Vary")).contains("Accept");
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(first.asByteArray());
        assertThat(first.header("Repr-Digest"))
                .isEqualTo("sha-256=:" + Base64.getEncoder().encodeToString(digest) + ":");
        assertThat(bill(project, accept).asByteArray()).isEqualTo(first.asByteArray());
        given().accept(accept)
                .header("If-None-Match", first.header("ETag"))
                .get("/v1/projects/{id}/revisions/1/bill-of-materials", project)
                .then()
                .statusCode(304);
    }

    @Test
    void theQuotationIsOfTheDayOfTheRevisionAtItsSalePrices() throws Exception {
        String project = project();
        JsonNode revision = JsonMapper.shared()
                .readTree(given().get("/v1/projects/{id}/revisions/1", project).asByteArray());

        String quotation = new String(bill(project, "application/xml").asByteArray(), StandardCharsets.UTF_8);

        String day = revision.get("createdAt").asString().substring(0, 10);
        String total = revision.at("/result/billOfMaterials/required/sale/total/amount")
                .asString();
        assertThat(total).isNotEmpty();
        assertThat(quotation)
                .contains("<cbc:IssueDate>" + day + "</cbc:IssueDate>")
                .contains(">" + total + "</cbc:PayableAmount>");
    }

    /** A fifth of the sale price: the sale line is 1 / 0.8 of the catalogue's, but for the rounding of the unit price. */
    @Test
    void theTableHasSalePricesBesideTheCatalogues() throws Exception {
        String text = new String(bill(project(), "text/csv").asByteArray(), StandardCharsets.UTF_8);
        List<NamedCsvRecord> charged;
        try (var reader = CsvReader.builder().ofNamedCsvRecord(text)) {
            charged = reader.stream()
                    .filter(row -> !row.getField("unitPrice").isEmpty())
                    .toList();
        }

        assertThat(charged).isNotEmpty().allSatisfy(row -> {
            assertThat(row.getField("margin")).isEqualTo("0.2");
            double half = 0.005 * Double.parseDouble(row.getField("orderQuantity")) + 0.01;
            assertThat(Double.parseDouble(row.getField("saleLinePrice")))
                    .isCloseTo(Double.parseDouble(row.getField("linePrice")) / 0.8, within(half));
        });
    }

    @Test
    void whatIsNotThereIsAProblem() throws Exception {
        given().get("/v1/projects/{id}/revisions/2/bill-of-materials", project())
                .then()
                .statusCode(404)
                .contentType("application/problem+json");
    }
}
