package io.axiswright.engine.standard;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.engine.quantity.ConductorSize;
import java.util.OptionalDouble;

/** One row of a table file. */
record TableRow(NamedCsvRecord cells) {

    String text(String column) {
        return cells.getField(column);
    }

    double number(String column) {
        return Double.parseDouble(text(column));
    }

    /** The number of a cell; nothing where the cell is empty. */
    OptionalDouble optionalNumber(String column) {
        String text = text(column);
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    /** The bound of a "row holds up to" column; an empty cell has no end. */
    double upTo(String column) {
        return optionalNumber(column).orElse(Double.POSITIVE_INFINITY);
    }

    <E extends Enum<E>> E word(String column, Class<E> words) {
        return Enum.valueOf(words, text(column));
    }

    ConductorSize size() {
        return new ConductorSize(text("size"));
    }

    <T> Sourced<T> sourced(T value) {
        return new Sourced<>(value, new Source(text("source"), word("confidence", Confidence.class)));
    }
}
