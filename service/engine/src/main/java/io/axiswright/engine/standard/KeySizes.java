package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Length;
import java.util.List;
import java.util.Optional;

/** Parallel keys by shaft diameter. */
public final class KeySizes {

    private static final double METRES_PER_MILLIMETRE = 1e-3;
    private static final double METRES_PER_INCH = 0.0254;
    private static final List<Row> METRIC = read("iso-773-keys", METRES_PER_MILLIMETRE);
    private static final List<Row> INCH = read("asme-b17-1-keys", METRES_PER_INCH);

    private record Row(double over, double to, Optional<KeySize> key) {}

    private KeySizes() {}

    /** Metric key (ISO/R 773, DIN 6885-1) for shafts over 6 up to 230 mm; nothing outside. */
    public static Optional<KeySize> metric(Length shaftDiameter) {
        return find(METRIC, shaftDiameter);
    }

    /** Square inch key (ASME B17.1) for shafts over 5/16 up to 7 1/2 in; nothing outside. */
    public static Optional<KeySize> inch(Length shaftDiameter) {
        return find(INCH, shaftDiameter);
    }

    private static Optional<KeySize> find(List<Row> rows, Length shaftDiameter) {
        double diameter = shaftDiameter.si();
        for (Row row : rows) {
            if (!Limits.within(diameter, row.over) && Limits.within(diameter, row.to)) {
                return row.key;
            }
        }
        return Optional.empty();
    }

    private static List<Row> read(String file, double unit) {
        return TableFile.rows(file).stream()
                .map(r ->
                        new Row(r.number("shaft_over") * unit, r.number("shaft_to") * unit, Optional.of(key(r, unit))))
                .toList();
    }

    private static KeySize key(TableRow row, double unit) {
        return new KeySize(
                new Length(row.number("width") * unit),
                new Length(row.number("height") * unit),
                new Length(row.number("shaft_depth") * unit),
                new Length(row.number("hub_depth") * unit),
                row.sourced(row).source());
    }
}
