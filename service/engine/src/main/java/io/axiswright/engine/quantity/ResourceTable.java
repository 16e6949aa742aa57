package io.axiswright.engine.quantity;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads the engine's data files: CSV on the class path, a header row, sources in comment lines. */
public final class ResourceTable {

    private ResourceTable() {}

    /** All rows of a file, in its order; the path starts with a slash. */
    public static List<NamedCsvRecord> rows(String path) {
        try (var in = Objects.requireNonNull(ResourceTable.class.getResourceAsStream(path), path);
                var csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8));
                Stream<NamedCsvRecord> rows = csv.stream()) {
            return rows.toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file of constants: the number in column "value" under the name in column "name". */
    public static Map<String, Double> constants(String path) {
        return rows(path).stream()
                .collect(Collectors.toUnmodifiableMap(
                        row -> row.getField("name"), row -> Double.valueOf(row.getField("value"))));
    }
}
