package io.axiswright.app.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.finding.Finding;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A bill as comma-separated values (RFC 4180), UTF-8: one table under one header. The column {@code section} says what a row is: a line of that
 * section, or, after all lines, a finding ({@value #FINDING}), which has no item, quantity and price, so that nobody can order it, but its
 * own id, its text as description, and the columns that are its own. What a spreadsheet would take for a formula gets an apostrophe before it, since
 * ids and descriptions come from whoever made the catalogue: at the beginning of a text, and behind a semicolon or tab, where
 * spreadsheets of many languages begin a cell whatever the quotes say.
 */
final class BillCsv {

    private static final Pattern FORMULA_BEGINNING =
            Pattern.compile("(?<=^|[;\t])(?=\\h*[=+\\-@\uFF1D\uFF0B\uFF0D\uFF20\t\r])");

    /** What the column "section" says of a finding. */
    static final String FINDING = "finding";

    /** The columns that findings have beside those of lines, empty for lines. */
    private static final List<String> OF_FINDINGS = List.of("severity", "code", "subject", "remedy", "clause");

    private BillCsv() {}

    static byte[] write(BillResult bill) {
        var text = new StringWriter();
        try (var csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            List<String> headings = Stream.concat(BillTable.headings().stream(), OF_FINDINGS.stream())
                    .toList();
            csv.writeRecord(headings);
            BillTable.rows(bill).forEach(row -> csv.writeRecord(line(row)));
            for (int k = 0; k < bill.findings().size(); k++) {
                Map<String, String> cells = cells(k + 1, bill.findings().get(k));
                csv.writeRecord(headings.stream()
                        .map(heading -> harmless(cells.getOrDefault(heading, "")))
                        .toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> line(@Nullable Object[] row) {
        return Stream.concat(
                        Arrays.stream(row).map(BillCsv::cell),
                        OF_FINDINGS.stream().map(_ -> ""))
                .toList();
    }

    private static Map<String, String> cells(int number, Finding finding) {
        return Map.of(
                "section", FINDING,
                "id", FINDING + ":" + number,
                "description", finding.text(),
                "severity", finding.severity().name(),
                "code", finding.code().code(),
                "subject", finding.subject(),
                "remedy", finding.remedy(),
                "clause", finding.clause());
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
