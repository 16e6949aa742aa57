package io.axiswright.app.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.axiswright.app.support.Demo;
import io.axiswright.app.support.HttpTest;
import java.io.File;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The bill opened by LibreOffice without a screen, as a buyer would: texts are texts, numbers are numbers, nothing is a formula.
 * Skipped, and said to be, where LibreOffice is not installed; `apt-get install libreoffice-calc-nogui` brings it.
 */
@Tag("slow")
class BillInSpreadsheetTest extends HttpTest {

    private static final String BILL = "/v1/sizing/bill-of-materials";
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
    private static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    private static final String FORMULA = "=1+1";

    /** Commas, double quotes, UTF-8, from the first row; no guessing of dates and the like. */
    private static final String CSV_FILTER = "CSV:44,34,76,1,,0,false,false";

    @TempDir
    private Path folder = Path.of("");

    private static Optional<Path> soffice() {
        return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .map(place -> Path.of(place, "soffice"))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static ObjectNode request() {
        ObjectNode request = Demo.revision("", "", 1);
        request.remove(List.of("message", "author", "catalogue"));
        ObjectNode catalogue = Demo.catalogue("spreadsheets");
        for (JsonNode accessory : catalogue.get("accessories")) {
            if (accessory.get("id").asString().equals("rail-kit")) {
                ((ObjectNode) accessory).put("description", FORMULA);
            }
        }
        return request.set("inlineCatalogue", catalogue);
    }

    @Test
    void csvIsReadAsItIsMeant() throws Exception {
        holdsTheBill("text/csv", "bill.csv", List.of("--infilter=" + CSV_FILTER), "'" + FORMULA);
    }

    @Test
    void theWorkbookIsReadAsItIsMeant() throws Exception {
        holdsTheBill(XLSX, "bill.xlsx", List.of(), FORMULA);
    }

    private void holdsTheBill(String accept, String file, List<String> options, String description) throws Exception {
        Optional<Path> soffice = soffice();
        assumeTrue(soffice.isPresent(), "LibreOffice (soffice) is not installed, so no spreadsheet was opened");
        byte[] document = given(request()).accept(accept).post(BILL).asByteArray();
        JsonNode bill = JsonMapper.shared()
                .readTree(given(request()).accept("application/json").post(BILL).asByteArray());
        Path written = Files.write(folder.resolve(file), document);

        List<List<Element>> rows = rows(convert(soffice.orElseThrow(), written, options));

        List<JsonNode> lines = new ArrayList<>();
        for (String section : List.of("required", "optional", "customerSupplied", "noCharge", "spares")) {
            bill.get(section).get("lines").forEach(lines::add);
        }
        int findings =
                accept.equals("text/csv") ? bill.get("findings").size() : 0; // in the workbook on a sheet of their own
        assertThat(rows).hasSize(1 + lines.size() + findings);
        assertThat(text(rows.getFirst().get(4))).isEqualTo("quantity");
        for (int k = 0; k < lines.size(); k++) {
            List<Element> row = rows.get(k + 1);
            assertThat(text(row.get(1))).isEqualTo(lines.get(k).get("id").asString());
            Element quantity = row.get(4);
            assertThat(quantity.getAttributeNS(OFFICE, "value-type")).isEqualTo("float");
            assertThat(new BigDecimal(quantity.getAttributeNS(OFFICE, "value")))
                    .isEqualByComparingTo(lines.get(k).get("quantity").decimalValue());
            if (lines.get(k).get("item").asString().equals("rail-kit")) {
                assertThat(text(row.get(3))).isEqualTo(description);
            }
            assertThat(row).allMatch(cell -> !cell.hasAttributeNS(TABLE, "formula"));
        }
    }

    /** The document as flat OpenDocument, by a LibreOffice with a profile of its own. */
    private Path convert(Path soffice, Path document, List<String> options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                soffice.toString(),
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--norestore",
                "--convert-to",
                "fods",
                "--outdir",
                folder.toString()));
        command.addAll(options);
        command.add(document.toString());
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        if (!process.waitFor(5, TimeUnit.MINUTES)) {
            process.destroyForcibly();
        }
        Path converted = folder.resolve("bill.fods");
        assertThat(converted).as(Files.readString(folder.resolve("log"))).exists();
        return converted;
    }

    /** The cells of the first sheet, those that repeat as often as they do; empty rows and cells at the end are left out. */
    private static List<List<Element>> rows(Path document) throws Exception {
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        var sheet = (Element) factory.newDocumentBuilder()
                .parse(document.toFile())
                .getElementsByTagNameNS(TABLE, "table")
                .item(0);
        List<List<Element>> rows = new ArrayList<>();
        var all = sheet.getElementsByTagNameNS(TABLE, "table-row");
        for (int r = 0; r < all.getLength(); r++) {
            List<Element> row = new ArrayList<>();
            var cells = ((Element) all.item(r)).getElementsByTagNameNS(TABLE, "table-cell");
            for (int c = 0; c < cells.getLength(); c++) {
                var cell = (Element) cells.item(c);
                String repeated = cell.getAttributeNS(TABLE, "number-columns-repeated");
                int times = repeated.isEmpty() ? 1 : Math.min(Integer.parseInt(repeated), 64);
                for (int t = 0; t < times; t++) {
                    row.add(cell);
                }
            }
            if (row.stream().anyMatch(cell -> !text(cell).isEmpty())) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static String text(Element cell) {
        return cell.getTextContent().strip();
    }
}
