package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.ResourceTable;
import java.util.List;

/** Reads the table files of this package; every row ends with its source and confidence. */
final class TableFile {

    private TableFile() {}

    /** All rows of {@code /standard/<name>.csv}, in the order of the file. */
    static List<TableRow> rows(String name) {
        return ResourceTable.rows("/standard/" + name + ".csv").stream()
                .map(TableRow::new)
                .toList();
    }
}
