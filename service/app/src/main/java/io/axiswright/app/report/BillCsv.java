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
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A bill as comma-separated values (RFC 4180), UTF-8. What a spreadsheet would take for a formula gets an apostrophe before it, since
 * ids and descriptions come from whoever made the catalogue: at the beginning of a text, and behind a semicolon or tab, where
 * spreadsheets of many languages begin a cell whatever the quotes say.
 */
final class BillCsv {

    private static final Pattern FORMULA_BEGINNING =
            Pattern.compile("(?<=^|[;\t])(?=\\h*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20\t\r])");

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

    static String harmless(String text) {
        return FORMULA_BEGINNING.matcher(text).replaceAll("'");
    }
}
