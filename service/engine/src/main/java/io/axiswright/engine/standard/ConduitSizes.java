package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConduitType;
import io.axiswright.engine.quantity.Length;
import java.util.List;
import java.util.Optional;

/** Inner diameters of conduits of North American trade size (NFPA 70 Chapter 9 Table 4). */
public final class ConduitSizes {

    private static final double METRES_PER_INCH = 0.0254;

    private record Row(ConduitType type, int metricDesignator, Sourced<Length> innerDiameter) {}

    private static final List<Row> TABLE = TableFile.rows("nec-chapter-9-table-4").stream()
            .map(r -> new Row(
                    r.word("type", ConduitType.class),
                    (int) r.number("metric_designator"),
                    r.sourced(new Length(r.number("inner_diameter_in") * METRES_PER_INCH))))
            .toList();

    private ConduitSizes() {}

    /** The inner diameter; nothing for a size the type is not made in. */
    public static Optional<Sourced<Length>> innerDiameter(ConduitType type, int metricDesignator) {
        return TABLE.stream()
                .filter(row -> row.type == type && row.metricDesignator == metricDesignator)
                .map(Row::innerDiameter)
                .findFirst();
    }

    /** The sizes a type is made in, smallest first. */
    public static List<Integer> metricDesignators(ConduitType type) {
        return TABLE.stream()
                .filter(row -> row.type == type)
                .map(Row::metricDesignator)
                .toList();
    }
}
