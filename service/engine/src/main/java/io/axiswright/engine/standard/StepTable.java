package io.axiswright.engine.standard;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/** A table whose rows hold up to a bound; between two bounds the upper row counts, beyond the last there is no answer. */
final class StepTable<T> {

    private final double[] bounds;
    private final List<Optional<Sourced<T>>> values;

    private StepTable(double[] bounds, List<Optional<Sourced<T>>> values) {
        this.bounds = bounds;
        this.values = values;
    }

    /** A table of the rows that pass, ascending in the bound. */
    static <T> StepTable<T> of(
            List<TableRow> rows, Predicate<TableRow> which, String bound, Function<TableRow, Optional<T>> value) {
        List<TableRow> used = rows.stream().filter(which).toList();
        double[] bounds = used.stream().mapToDouble(r -> r.upTo(bound)).toArray();
        for (int k = 1; k < bounds.length; k++) {
            if (bounds[k] <= bounds[k - 1]) {
                throw new IllegalStateException("table not ascending in " + bound + " at " + bounds[k]);
            }
        }
        List<Optional<Sourced<T>>> values =
                used.stream().map(r -> value.apply(r).map(r::sourced)).toList();
        return new StepTable<>(bounds, values);
    }

    /** The first row whose bound is not below the value. */
    Optional<Sourced<T>> at(double value) {
        for (int k = 0; k < bounds.length; k++) {
            if (Limits.within(value, bounds[k])) {
                return values.get(k);
            }
        }
        return Optional.empty();
    }

    /** The highest bound that has an answer. */
    double end() {
        double end = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < bounds.length; k++) {
            if (values.get(k).isPresent()) {
                end = bounds[k];
            }
        }
        return end;
    }
}
