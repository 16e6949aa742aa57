package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Area;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The factor k of the adiabatic rule S ≥ I·√t / k (IEC 60364-4-43 434.5.2), in A·s^½/mm². */
public final class AdiabaticFactor {

    private static final double MM2 = 1e6;
    private static final Map<ConductorMaterial, Map<Insulation, StepTable<Double>>> TABLES = Map.of(
            ConductorMaterial.COPPER, read("adiabatic-k"), ConductorMaterial.ALUMINIUM, read("adiabatic-k-aluminium"));

    private AdiabaticFactor() {}

    /** k by material, insulation and cross-section of the conductor. */
    public static Sourced<Double> of(ConductorMaterial material, Insulation insulation, Area section) {
        var table = Objects.requireNonNull(TABLES.get(material)).get(insulation);
        if (table == null) {
            throw new IllegalStateException("no adiabatic factor for " + insulation);
        }
        return table.at(section.si() * MM2).orElseThrow();
    }

    private static Map<Insulation, StepTable<Double>> read(String file) {
        List<TableRow> rows = TableFile.rows(file);
        var tables = new EnumMap<Insulation, StepTable<Double>>(Insulation.class);
        for (Insulation insulation : Insulation.values()) {
            tables.put(
                    insulation,
                    StepTable.of(
                            rows,
                            r -> r.word("insulation", Insulation.class) == insulation,
                            "section_up_to",
                            r -> Optional.of(r.number("k"))));
        }
        return tables;
    }
}
