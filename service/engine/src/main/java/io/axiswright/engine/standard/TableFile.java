package io.axiswright.engine.standard;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** Reads the table files of this package; every row ends with its source and confidence. */
final class TableFile {

    private TableFile() {}

    /** All rows of {@code /standard/<name>.csv}, in the order of the file. */
    static List<TableRow> rows(String name) {
        String path = "/standard/" + name + ".csv";
        try (var in = Objects.requireNonNull(TableFile.class.getResourceAsStream(path), path);
                var csv = CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8));
                Stream<NamedCsvRecord> rows = csv.stream()) {
            return rows.map(TableRow::new).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
