package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.ConductorSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** A table with one row for each conductor size. */
final class SizeTable<T> {

    private final Map<ConductorSize, Sourced<T>> rows = new LinkedHashMap<>();
    private final List<ConductorSize> sizes;

    private SizeTable(List<TableRow> rows, Function<TableRow, Optional<T>> value) {
        for (TableRow row : rows) {
            value.apply(row).ifPresent(v -> this.rows.put(row.size(), row.sourced(v)));
        }
        sizes = List.copyOf(this.rows.keySet());
    }

    /** A table of the rows that pass and have a value, in the order of the file. */
    static <T> SizeTable<T> of(List<TableRow> rows, Predicate<TableRow> which, Function<TableRow, Optional<T>> value) {
        return new SizeTable<>(rows.stream().filter(which).toList(), value);
    }

    List<ConductorSize> sizes() {
        return sizes;
    }

    Optional<Sourced<T>> at(ConductorSize size) {
        return Optional.ofNullable(rows.get(size));
    }
}
