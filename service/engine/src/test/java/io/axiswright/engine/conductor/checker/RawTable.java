package io.axiswright.engine.conductor.checker;

import static java.util.Objects.requireNonNull;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;

/** A table file read afresh, without any of the engine's look-ups. */
final class RawTable {

    private RawTable() {}

    static List<Map<String, String>> rows(String name) {
        try (var in = requireNonNull(RawTable.class.getResourceAsStream("/standard/" + name + ".csv"));
                var csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return csv.stream().map(r -> r.getFieldsAsMap()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Map<String, String> row, String column) {
        return requireNonNull(row.get(column), column);
    }

    /** The number of a cell; not a number where it is empty. */
    static double number(Map<String, String> row, String column) {
        String text = text(row, column);
        return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
    }

    /** The value in the first row whose bound holds; not a number beyond the table. */
    static double step(List<Map<String, String>> rows, String bound, double at, String value) {
        for (var row : rows) {
            double end = number(row, bound);
            if (Double.isNaN(end) || at <= end + 1e-6) {
                return number(row, value);
            }
        }
        return Double.NaN;
    }
}
