package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.quantity.Ratio;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The shapes that tables of correction factors have in common. */
final class Factors {

    private Factors() {}

    /** One column of factors over ambient temperature in °C; an empty cell has no answer. */
    static StepTable<Ratio> byAmbient(List<TableRow> rows, String column) {
        return StepTable.of(rows, r -> true, "ambient_up_to", r -> {
            var factor = r.optionalNumber(column);
            return factor.isPresent() ? Optional.of(new Ratio(factor.getAsDouble())) : Optional.empty();
        });
    }

    /** Factors over the number of circuits, for each installation method. */
    static Map<InstallationMethod, StepTable<Ratio>> byCircuits(List<TableRow> rows) {
        var tables = new EnumMap<InstallationMethod, StepTable<Ratio>>(InstallationMethod.class);
        for (InstallationMethod method : InstallationMethod.values()) {
            tables.put(
                    method,
                    StepTable.of(
                            rows,
                            r -> r.word("method", InstallationMethod.class) == method,
                            "circuits_up_to",
                            r -> Optional.of(new Ratio(r.number("factor")))));
        }
        return tables;
    }

    /** One column of factors over a bound, for each code and each kind. */
    static <K extends Enum<K>> Map<CodeBasis, Map<K, StepTable<Ratio>>> byKind(
            List<TableRow> rows, Class<K> kinds, String bound, String column) {
        var tables = new EnumMap<CodeBasis, Map<K, StepTable<Ratio>>>(CodeBasis.class);
        for (CodeBasis basis : CodeBasis.values()) {
            var ofKinds = new EnumMap<K, StepTable<Ratio>>(kinds);
            for (K kind : kinds.getEnumConstants()) {
                ofKinds.put(
                        kind,
                        StepTable.of(
                                rows,
                                r -> r.word("basis", CodeBasis.class) == basis && r.word("kind", kinds) == kind,
                                bound,
                                r -> Optional.of(new Ratio(r.number(column)))));
            }
            tables.put(basis, ofKinds);
        }
        return tables;
    }
}
