package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.quantity.Current;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Standard rated currents of protective devices: NFPA 70 240.6(A); IEC 60898-1 (breakers to 125 A), IEC 60947-2 (larger
 * breakers) and IEC 60269-1 (fuses gG).
 */
public final class DeviceRatings {

    private static final Map<CodeBasis, Map<DeviceKind, List<Sourced<Current>>>> TABLE = tables();

    private DeviceRatings() {}

    /** All standard ratings, smallest first. */
    public static List<Sourced<Current>> of(CodeBasis basis, DeviceKind kind) {
        return TABLE.getOrDefault(basis, Map.of()).getOrDefault(kind, List.of());
    }

    /** The smallest standard rating that is not below the current; the current itself where it is a standard rating. */
    public static Optional<Sourced<Current>> nextUp(CodeBasis basis, DeviceKind kind, Current current) {
        for (Sourced<Current> rating : of(basis, kind)) {
            if (Limits.within(current.si(), rating.value().si())) {
                return Optional.of(rating);
            }
        }
        return Optional.empty();
    }

    /** The largest standard rating that is not above the current; the current itself where it is a standard rating. */
    public static Optional<Sourced<Current>> nextDown(CodeBasis basis, DeviceKind kind, Current current) {
        for (Sourced<Current> rating : of(basis, kind).reversed()) {
            if (Limits.within(rating.value().si(), current.si())) {
                return Optional.of(rating);
            }
        }
        return Optional.empty();
    }

    private static Map<CodeBasis, Map<DeviceKind, List<Sourced<Current>>>> tables() {
        var tables = new EnumMap<CodeBasis, Map<DeviceKind, List<Sourced<Current>>>>(CodeBasis.class);
        tables.put(CodeBasis.NFPA_79, read("device-ratings-na"));
        tables.put(CodeBasis.IEC_60204_1, read("device-ratings-iec"));
        return tables;
    }

    private static Map<DeviceKind, List<Sourced<Current>>> read(String file) {
        List<TableRow> rows = TableFile.rows(file);
        var ratings = new EnumMap<DeviceKind, List<Sourced<Current>>>(DeviceKind.class);
        for (DeviceKind kind : DeviceKind.values()) {
            ratings.put(
                    kind,
                    rows.stream()
                            .filter(r -> r.word("device", DeviceKind.class) == kind)
                            .map(r -> r.sourced(new Current(r.number("rating"))))
                            .toList());
        }
        return ratings;
    }
}
