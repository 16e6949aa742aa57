package io.axiswright.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The bill in each of its forms, held against its JSON form. */
class BillDocumentsTest extends HttpTest {

    private static final String BILL = "/v1/sizing/bill-of-materials";
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static final String NASTY = "=HYPERLINK(\"x\"), \u00d7 2 <b>&\uFFFE";
    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private static final String BASIC = UBL + "CommonBasicComponents-2";
    private static final String AGGREGATE = UBL + "CommonAggregateComponents-2";
    private static final BigDecimal HALF_A_CENT = new BigDecimal("0.005");
    private static final List<String> SECTIONS =
            List.of("required", "optional", "customerSupplied", "noCharge", "spares");

    /** The demonstration, one description as bad as can be, one item without a price, a spare of every gateway. */
    private static ObjectNode request() {
        ObjectNode request = Demo.revision("", "", 1);
        request.remove(List.of("message", "author", "catalogue"));
        ObjectNode catalogue = Demo.catalogue("documents");
        for (JsonNode accessory : catalogue.get("accessories")) {
            switch (accessory.get("id").asString()) {
                case "rail-kit" -> ((ObjectNode) accessory).put("description", NASTY);
                case "ferrule-set" -> ((ObjectNode) accessory).remove("price");
                default -> {}
            }
        }
        ((ObjectNode) request.get("design")).putArray("spares").addObject().put("kind", "GATEWAY");
        return request.set("inlineCatalogue", catalogue);
    }

    private Response answer(String accept) {
        Response answer = given(request()).accept(accept).post(BILL);
        assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(200);
        return answer;
    }

    private JsonNode json() {
        return JsonMapper.shared().readTree(answer("application/json").asByteArray());
    }

    private static List<JsonNode> lines(JsonNode bill, List<String> sections) {
        List<JsonNode> lines = new ArrayList<>();
        sections.forEach(section -> bill.get(section).get("lines").forEach(lines::add));
        return lines;
    }

    private static Document xml(byte[] bytes) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static String basic(Element parent, String name) {
        return parent.getElementsByTagNameNS(BASIC, name).item(0).getTextContent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"*/*", "application/json", "text/csv", XLSX, "application/xml"})
    void saysWhatItIsAndWhatItsDigestIs(String accept) throws Exception {
        Response answer = answer(accept);
        assertThat(answer.contentType()).startsWith(accept.equals("*/*") ? "application/json" : accept);
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(answer.asByteArray());
        assertThat(answer.header("Repr-Digest"))
                .isEqualTo("sha-256=:" + Base64.getEncoder().encodeToString(digest) + ":");
    }

    @Test
    void takesTheFormTheCallerLikesBest() {
        assertThat(answer("application/xml;q=0.4, text/csv;q=0.7").contentType())
                .startsWith("text/csv");
    }

    @Test
    void csvHasTheLinesOfTheBillAndNoFormula() {
        String text = new String(answer("text/csv").asByteArray(), StandardCharsets.UTF_8);
        assertThat(text.replace("\r\n", "")).doesNotContain("\n", "\r");
        List<NamedCsvRecord> rows = csv(text).stream()
                .filter(row -> !row.getField("section").equals("finding"))
                .toList();
        List<JsonNode> lines = lines(json(), SECTIONS);
        assertThat(rows).hasSameSizeAs(lines);
        for (int k = 0; k < rows.size(); k++) {
            assertThat(rows.get(k).getField("id"))
                    .isEqualTo(lines.get(k).get("id").asString());
            assertThat(new BigDecimal(rows.get(k).getField("quantity")))
                    .isEqualByComparingTo(lines.get(k).get("quantity").decimalValue());
            assertThat(new BigDecimal(rows.get(k).getField("orderQuantity")))
                    .isEqualByComparingTo(lines.get(k).get("orderQuantity").decimalValue());
            assertThat(rows.get(k).getField("linePrice"))
                    .isEqualTo(lines.get(k).at("/linePrice/amount").asString(""));
        }
        assertThat(rows)
                .filteredOn(row -> row.getField("item").equals("rail-kit"))
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.getField("description")).isEqualTo("'" + NASTY));
    }

    private static List<NamedCsvRecord> csv(String text) {
        try (var reader = CsvReader.builder().ofNamedCsvRecord(text)) {
            return reader.stream().toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** The columns of lines stay where they were; those of findings come after them, and are empty for lines. */
    @Test
    void csvTellsTheFindingsOfTheBillAfterItsLines() {
        List<NamedCsvRecord> rows = csv(new String(answer("text/csv").asByteArray(), StandardCharsets.UTF_8));
        JsonNode bill = json();
        int lines = lines(bill, SECTIONS).size();
        List<JsonNode> findings = bill.get("findings").valueStream().toList();
        assertThat(findings).isNotEmpty();
        assertThat(rows).hasSize(lines + findings.size());
        assertThat(rows.getFirst().getHeader())
                .startsWith("section", "id", "item", "description", "quantity", "orderQuantity", "unit", "unitCode")
                .endsWith("saleLinePrice", "severity", "code", "subject", "remedy", "clause");
        assertThat(rows.subList(0, lines)).allSatisfy(row -> {
            assertThat(row.getField("section")).isNotEqualTo("finding");
            assertThat(row.getField("code") + row.getField("severity")).isEmpty();
        });
        for (int k = 0; k < findings.size(); k++) {
            NamedCsvRecord row = rows.get(lines + k);
            assertThat(row.getField("section")).isEqualTo("finding");
            assertThat(row.getField("id")).isEqualTo("finding:" + (k + 1));
            assertThat(row.getField("description"))
                    .isEqualTo(findings.get(k).get("text").asString());
            for (String own : List.of("severity", "code", "subject", "remedy", "clause")) {
                assertThat(row.getField(own)).isEqualTo(findings.get(k).get(own).asString());
            }
            for (String none : List.of("item", "quantity", "orderQuantity", "unitPrice", "linePrice", "currency")) {
                assertThat(row.getField(none)).isEmpty();
            }
        }
    }

    @Test
    void theWorkbookHasNumbersAsNumbersAndNoFormula(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("bill.xlsx"), answer(XLSX).asByteArray());
        Document sheet;
        try (var zip = new ZipFile(file.toFile())) {
            ZipEntry entry = Objects.requireNonNull(zip.getEntry("xl/worksheets/sheet1.xml"));
            sheet = xml(zip.getInputStream(entry).readAllBytes());
        }
        assertThat(sheet.getElementsByTagNameNS("*", "f").getLength()).isZero();
        Map<String, Element> cells = new HashMap<>();
        var all = sheet.getElementsByTagNameNS("*", "c");
        for (int k = 0; k < all.getLength(); k++) {
            var cell = (Element) all.item(k);
            cells.put(cell.getAttribute("r"), cell);
        }
        List<JsonNode> lines = lines(json(), SECTIONS);
        for (int k = 0; k < lines.size(); k++) {
            Element quantity = Objects.requireNonNull(cells.get("E" + (k + 2)));
            assertThat(quantity.getAttribute("t")).isIn("", "n");
            assertThat(new BigDecimal(
                            quantity.getElementsByTagNameNS("*", "v").item(0).getTextContent()))
                    .isEqualByComparingTo(lines.get(k).get("quantity").decimalValue());
            assertThat(Objects.requireNonNull(cells.get("C" + (k + 2))).getAttribute("t"))
                    .isEqualTo("s");
        }
        assertThat(cells).doesNotContainKey("E" + (lines.size() + 2));
    }

    /** 391.4 is no way to write a price of 391.40. */
    @Test
    void pricesOfTheWorkbookAreShownWithTheirPlaces(@TempDir Path folder) throws Exception {
        Path file = Files.write(folder.resolve("bill.xlsx"), answer(XLSX).asByteArray());
        Document sheet;
        Document styles;
        try (var zip = new ZipFile(file.toFile())) {
            sheet = part(zip, "xl/worksheets/sheet1.xml");
            styles = part(zip, "xl/styles.xml");
        }
        Map<String, String> formats = new HashMap<>();
        elements(styles.getDocumentElement(), "numFmt")
                .forEach(format -> formats.put(format.getAttribute("numFmtId"), format.getAttribute("formatCode")));
        List<Element> kinds =
                elements(elements(styles.getDocumentElement(), "cellXfs").getFirst(), "xf");
        List<Element> prices = elements(sheet.getDocumentElement(), "c").stream()
                .filter(cell -> cell.getAttribute("r").matches("[IJ]\\d+")
                        && !cell.getAttribute("t").equals("s")
                        && !elements(cell, "v").isEmpty())
                .toList();
        assertThat(prices).hasSizeGreaterThan(100).allSatisfy(cell -> {
            String format = kinds.get(Integer.parseInt(cell.getAttribute("s"))).getAttribute("numFmtId");
            // 2 is 0.00 by ECMA-376, part 1, 18.8.30
            assertThat(format.equals("2") ? "0.00" : formats.get(format)).isEqualTo("0.00");
        });
    }

    private static Document part(ZipFile zip, String name) throws Exception {
        return xml(
                zip.getInputStream(Objects.requireNonNull(zip.getEntry(name))).readAllBytes());
    }

    private static List<Element> elements(Element parent, String name) {
        var found = parent.getElementsByTagNameNS("*", name);
        return IntStream.range(0, found.getLength())
                .mapToObj(k -> (Element) found.item(k))
                .toList();
    }

    @Test
    void theQuotationIsValidByTheSchemaOfOasisAndAddsUp() throws Exception {
        byte[] bytes = answer("application/xml").asByteArray();
        new UblSchema().validate(bytes);
        Document quotation = xml(bytes);
        JsonNode bill = json();
        List<JsonNode> lines = lines(bill, List.of("required", "noCharge"));
        var items = quotation.getElementsByTagNameNS(AGGREGATE, "LineItem");
        assertThat(items.getLength()).isEqualTo(lines.size());
        BigDecimal sum = BigDecimal.ZERO;
        for (int k = 0; k < lines.size(); k++) {
            var item = (Element) items.item(k);
            var quantity =
                    (Element) item.getElementsByTagNameNS(BASIC, "Quantity").item(0);
            assertThat(new BigDecimal(quantity.getTextContent()))
                    .isEqualByComparingTo(lines.get(k).get("orderQuantity").decimalValue());
            addsUp(item, quantity);
            assertThat(quantity.getAttribute("unitCode"))
                    .isEqualTo(lines.get(k).get("unitCode").asString());
            var amounts = item.getElementsByTagNameNS(BASIC, "LineExtensionAmount");
            assertThat(amounts.getLength()).isEqualTo(lines.get(k).has("linePrice") ? 1 : 0);
            sum = amounts.getLength() == 0
                    ? sum
                    : sum.add(new BigDecimal(amounts.item(0).getTextContent()));
        }
        assertThat(sum).isEqualByComparingTo(bill.at("/required/total/amount").asString());
        assertThat(sum).isEqualByComparingTo(basic(quotation.getDocumentElement(), "PayableAmount"));
        Element root = quotation.getDocumentElement();
        assertThat(sum).isEqualByComparingTo(basic(root, "TaxExclusiveAmount"));
        var notes = root.getElementsByTagNameNS(BASIC, "Note");
        assertThat(IntStream.range(0, notes.getLength())
                        .mapToObj(k -> notes.item(k).getTextContent()))
                .anyMatch(note -> note.contains("ferrule-set"))
                .contains("All prices and the amount payable are without tax.");
    }

    /** Who takes quotations of two revisions matches their lines by id; a place in the list would not hold. */
    @Test
    void linesOfTheQuotationHaveTheIdsOfTheBillAndItsLeadTimes() throws Exception {
        Document quotation = xml(answer("application/xml").asByteArray());
        List<JsonNode> lines = lines(json(), List.of("required", "noCharge"));
        var quoted = quotation.getElementsByTagNameNS(AGGREGATE, "QuotationLine");
        int timed = 0;
        for (int k = 0; k < lines.size(); k++) {
            var line = (Element) quoted.item(k);
            assertThat(basic(line, "ID")).isEqualTo(lines.get(k).get("id").asString());
            var periods = line.getElementsByTagNameNS(BASIC, "DurationMeasure");
            assertThat(periods.getLength()).isEqualTo(lines.get(k).has("leadTime") ? 1 : 0);
            if (periods.getLength() == 1) {
                var days = (Element) periods.item(0);
                assertThat(days.getAttribute("unitCode")).isEqualTo("DAY");
                assertThat(Double.parseDouble(days.getTextContent()) * 86_400)
                        .isEqualTo(lines.get(k).at("/leadTime/value").asDouble());
                timed++;
            }
            boolean free = lines.get(k).get("kind").asString().equals("NO_CHARGE");
            assertThat(line.getElementsByTagNameNS(BASIC, "PriceAmount").getLength() == 0
                            && basic(line, free ? "Note" : "ID").equals("without charge"))
                    .isEqualTo(free);
        }
        assertThat(timed).isPositive();
    }

    /** A line of the quotation costs its quantity times its price, to half a cent. */
    private static void addsUp(Element item, Element quantity) {
        if (item.getElementsByTagNameNS(BASIC, "PriceAmount").getLength() > 0) {
            var exact = new BigDecimal(quantity.getTextContent()).multiply(new BigDecimal(basic(item, "PriceAmount")));
            assertThat(new BigDecimal(basic(item, "LineExtensionAmount")))
                    .isBetween(exact.subtract(HALF_A_CENT), exact.add(HALF_A_CENT));
        }
    }

    /** Cable glands come in packs of 10, cheaper from 20 on, so the demonstration orders more of them than it needs. */
    @Test
    void theDemonstrationOrdersWholePacks() {
        JsonNode bill = json();
        assertThat(lines(bill, List.of("required")).stream()
                        .filter(line -> line.get("item").asString().startsWith("cable-gland-m"))
                        .map(line -> line.get("orderQuantity").asInt()))
                .isNotEmpty()
                .allMatch(ordered -> ordered % 10 == 0);
        assertThat(bill.at("/leadTime/criticalItem").asString()).isNotEmpty();
        assertThat(bill.at("/required/mass/value").asDouble()).isPositive();
        assertThat(bill.at("/connections/gaps").isEmpty()).isTrue();
        assertThat(bill.at("/connections/cableEndsMatched").asInt())
                .isEqualTo(2
                        * (bill.at("/connections/cables").asInt()
                                + bill.at("/connections/lengths").asInt()))
                .isPositive();
        assertThat(lines(bill, List.of("spares")))
                .isNotEmpty()
                .allMatch(line -> line.get("quantity").asInt() == 1);
    }

    @Test
    void theSchemaWouldRefuseAQuotationWithoutItsDate() throws Exception {
        String quotation = new String(answer("application/xml").asByteArray(), StandardCharsets.UTF_8)
                .replaceFirst("<cbc:IssueDate>[^<]*</cbc:IssueDate>", "");
        var schema = new UblSchema();
        assertThatThrownBy(() -> schema.validate(quotation.getBytes(StandardCharsets.UTF_8)))
                .isInstanceOf(SAXException.class)
                .hasMessageContaining("IssueDate");
    }

    /** A machine without protective devices must not be bought from a quotation or a workbook that does not say so. */
    @Test
    void documentsSayWhatMustNotBeBuilt(@TempDir Path folder) throws Exception {
        ObjectNode request = request();
        ((ObjectNode) request.get("inlineCatalogue")).putArray("protectiveDevices");
        Response quotation = given(request).accept("application/xml").post(BILL);
        new UblSchema().validate(quotation.asByteArray());
        assertThat(basic(xml(quotation.asByteArray()).getDocumentElement(), "Note"))
                .startsWith("VIOLATION SUPPLY-DEVICE-MISSING: ");

        assertThat(csv(given(request).accept("text/csv").post(BILL).asString()))
                .anyMatch(row -> row.getField("severity").equals("VIOLATION")
                        && row.getField("code").equals("SUPPLY-DEVICE-MISSING"));

        Path file = Files.write(
                folder.resolve("bill.xlsx"),
                given(request).accept(XLSX).post(BILL).asByteArray());
        try (var zip = new ZipFile(file.toFile())) {
            ZipEntry texts = Objects.requireNonNull(zip.getEntry("xl/sharedStrings.xml"));
            assertThat(new String(zip.getInputStream(texts).readAllBytes(), StandardCharsets.UTF_8))
                    .contains("SUPPLY-DEVICE-MISSING");
        }
    }

    @Test
    void aFailureIsAProblemWhateverIsAccepted() {
        ObjectNode broken = request();
        broken.remove("inlineCatalogue");
        given(broken).accept("text/csv").post(BILL).then().statusCode(422).contentType("application/problem+json");
        given(request()).accept("image/png").post(BILL).then().statusCode(406).contentType("application/problem+json");
    }

    /** The demonstration catalogue has all that its machine needs. */
    @Test
    void theDemonstrationBillLacksNothing() {
        JsonNode bill = json();
        assertThat(bill.get("findings")
                        .valueStream()
                        .map(finding -> finding.get("code").asString()))
                .containsOnly("BILL-ITEM-WITHOUT-PRICE");
        assertThat(bill.get("cableEntries").valueStream()).isNotEmpty().allMatch(entry -> entry.has("gland"));
        assertThat(lines(bill, List.of("required")).stream()
                        .map(line -> line.get("item").asString()))
                .anyMatch(item -> item.startsWith("bus-link"))
                .anyMatch(item -> item.startsWith("stop-signal"))
                .anyMatch(item -> item.startsWith("split-gland"))
                .anyMatch(item -> item.startsWith("disconnector"));
    }
}
