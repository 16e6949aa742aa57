package io.axiswright.engine.standard;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Every row of every table file names where it comes from and how well it is known. */
class TableSourcesTest {

    @Test
    void everyRowHasSourceAndConfidence() throws IOException, URISyntaxException {
        var rows = new ArrayList<String>();
        for (Path file : files()) {
            try (var csv = CsvReader.builder()
                    .commentStrategy(CommentStrategy.SKIP)
                    .ofNamedCsvRecord(Files.readString(file))) {
                for (var row : csv) {
                    String where = file.getFileName() + " line " + row.getStartingLineNumber();
                    rows.add(where);
                    assertThat(row.getField("source")).as(where).isNotBlank().contains(" ");
                    assertThat(Confidence.valueOf(row.getField("confidence")))
                            .as(where)
                            .isNotNull();
                }
            }
        }
        assertThat(rows).hasSizeGreaterThan(500);
    }

    @Test
    void everyFileOpensWithAComment() throws IOException, URISyntaxException {
        assertThat(files())
                .hasSizeGreaterThan(25)
                .allSatisfy(file -> assertThat(Files.readString(file)).startsWith("# "));
    }

    private static List<Path> files() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(TableSourcesTest.class.getResource("/standard/nec-310-16.csv"))
                        .toURI())
                .getParent();
        try (var files = Files.list(Objects.requireNonNull(folder))) {
            return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
        }
    }
}
