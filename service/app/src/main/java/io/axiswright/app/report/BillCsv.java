package io.axiswright.app.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import io.axiswright.engine.bill.BillResult;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A bill as comma-separated values (RFC 4180), UTF-8. A text that a spreadsheet would take for a formula gets an apostrophe
 * before it, since ids and descriptions come from whoever made the catalogue.
 */
final class BillCsv {

    private static final String FORMULA_BEGINNINGS = "=+-@\t\r";

    private BillCsv() {}

    static byte[] write(BillResult bill) {
        var text = new StringWriter();
        try (var csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(BillTable.headings());
            BillTable.rows(bill)
                    .forEach(row -> csv.writeRecord(
                            Arrays.stream(row).map(BillCsv::cell).toList()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(@Nullable Object value) {
        return switch (value) {
            case null -> "";
            case BigDecimal number -> number.toPlainString();
            default -> harmless(value.toString());
        };
    }

    private static String harmless(String text) {
        return !text.isEmpty() && FORMULA_BEGINNINGS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
