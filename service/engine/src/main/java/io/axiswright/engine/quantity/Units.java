package io.axiswright.engine.quantity;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The table of units: which a caller may send for each dimension, and the one we answer in (its first row). */
public final class Units {

    private static final Map<Dimension, List<Unit>> TABLE = read();

    /** Smaller numbers are tiny. */
    private static final double TINY = 0.1;

    /** Larger numbers are huge. */
    private static final double HUGE = 1e6;

    private Units() {}

    /** All units of a dimension, the one used in answers first. */
    public static List<Unit> of(Dimension dimension) {
        return TABLE.getOrDefault(dimension, List.of());
    }

    /** The unit in which answers state this dimension. */
    public static Unit answerUnit(Dimension dimension) {
        return of(dimension).getFirst();
    }

    /**
     * That unit; or of its decimal parts the first in which the number is not tiny (16 mm2, not 0.000016 m2), or of the larger units
     * the first in which it is not huge (5 MPa, not 5000000 Pa).
     */
    public static Unit readable(Quantity quantity) {
        Unit answer = answerUnit(quantity.dimension());
        double magnitude = Math.abs(answer.fromSi(quantity.si()));
        if (magnitude >= HUGE) {
            return of(quantity.dimension()).stream()
                    .filter(unit -> unit.factor() > answer.factor())
                    .filter(unit -> Math.abs(unit.fromSi(quantity.si())) < HUGE)
                    .findFirst()
                    .orElse(answer);
        }
        if (magnitude == 0 || magnitude >= TINY) {
            return answer;
        }
        return of(quantity.dimension()).stream()
                .filter(unit -> isDecimalPart(unit.factor() / answer.factor()))
                .filter(unit -> Math.abs(unit.fromSi(quantity.si())) >= TINY)
                .findFirst()
                .orElse(answer);
    }

    private static boolean isDecimalPart(double ratio) {
        double power = Math.log10(ratio);
        return ratio < 1 && Math.abs(power - Math.rint(power)) < 1e-9;
    }

    /** The unit of a dimension by its symbol on the wire. */
    public static Optional<Unit> find(Dimension dimension, String symbol) {
        return of(dimension).stream().filter(u -> u.symbol().equals(symbol)).findFirst();
    }

    private static Map<Dimension, List<Unit>> read() {
        return ResourceTable.rows("/quantity/units.csv").stream()
                .map(Units::unit)
                .collect(Collectors.groupingBy(
                        Unit::dimension, () -> new EnumMap<>(Dimension.class), Collectors.toUnmodifiableList()));
    }

    private static Unit unit(NamedCsvRecord row) {
        return new Unit(
                Dimension.valueOf(row.getField("dimension")),
                row.getField("symbol"),
                row.getField("name"),
                row.getField("rec20"),
                Double.parseDouble(row.getField("factor")),
                Double.parseDouble(row.getField("zero")));
    }
}
