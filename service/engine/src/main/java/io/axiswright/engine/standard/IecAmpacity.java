package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/** Ampacity of conductors under IEC, before correction. */
public final class IecAmpacity {

    private record Case(ConductorMaterial material, int loaded) {}

    private static final Map<InstallationMethod, SizeTable<Current>> MACHINE =
            byMethod(TableFile.rows("iec-60204-1-table-6"), r -> true);
    private static final Map<Case, Map<Insulation, Map<InstallationMethod, SizeTable<Current>>>> INSTALLATION = Map.of(
            new Case(ConductorMaterial.COPPER, 2), installation("iec-60364-5-52-ampacity", 2),
            new Case(ConductorMaterial.COPPER, 3), installation("iec-60364-5-52-ampacity", 3),
            new Case(ConductorMaterial.ALUMINIUM, 2), installation("iec-60364-5-52-ampacity-aluminium", 2),
            new Case(ConductorMaterial.ALUMINIUM, 3), installation("iec-60364-5-52-ampacity-aluminium", 3));

    private static final Map<Case, Map<Insulation, SizeTable<Current>>> METHOD_F = methodF();

    private static final double AT_40 = IecCorrection.ambient(Insulation.PVC_70, Limits.ofCelsius(40))
            .orElseThrow()
            .value()
            .si();

    private IecAmpacity() {}

    /**
     * PVC on machines, three loaded conductors, ambient 40 °C: copper by IEC 60204-1 Table 6, 0.75 to 120 mm²; what that standard has
     * no table of, which is aluminium, method F and copper above 120 mm², as the table is formed: from IEC 60364-5-52, corrected to
     * 40 °C.
     */
    public static Optional<Sourced<Current>> machine(
            ConductorMaterial material, ConductorSize size, InstallationMethod method) {
        return switch (material) {
            case COPPER ->
                Optional.ofNullable(MACHINE.get(method))
                        .flatMap(table -> table.at(size))
                        .or(() -> formed(material, size, method));
            case ALUMINIUM -> formed(material, size, method);
        };
    }

    private static Optional<Sourced<Current>> formed(
            ConductorMaterial material, ConductorSize size, InstallationMethod method) {
        return installation(material, size, method, Insulation.PVC_70, 3)
                .map(at30 -> new Sourced<>(new Current(AT_40 * at30.value().si()), at30.source()));
    }

    /**
     * IEC 60364-5-52 Tables B.52.2 to B.52.5 and B.52.10 to B.52.13: ambient 30 °C; copper 1 to 300 mm², aluminium 10 to 120 mm²,
     * method F from 25 mm² up.
     *
     * @param material what the conductor is made of
     * @param insulation PVC_70 or XLPE_90
     * @param loadedConductors two, or three
     */
    public static Optional<Sourced<Current>> installation(
            ConductorMaterial material,
            ConductorSize size,
            InstallationMethod method,
            Insulation insulation,
            int loadedConductors) {
        var loaded = new Case(material, Math.clamp(loadedConductors, 2, 3));
        SizeTable<Current> table;
        if (method == InstallationMethod.F) {
            table = Objects.requireNonNull(METHOD_F.get(loaded)).get(insulation);
        } else {
            var tables = Objects.requireNonNull(INSTALLATION.get(loaded)).get(insulation);
            table = tables == null ? null : tables.get(method);
        }
        return table == null ? Optional.empty() : table.at(size);
    }

    private static Map<Case, Map<Insulation, SizeTable<Current>>> methodF() {
        List<TableRow> rows = TableFile.rows("iec-60364-5-52-method-f");
        var tables = new HashMap<Case, Map<Insulation, SizeTable<Current>>>();
        for (ConductorMaterial material : ConductorMaterial.values()) {
            for (int loaded : List.of(2, 3)) {
                var ofCase = new EnumMap<Insulation, SizeTable<Current>>(Insulation.class);
                for (Insulation insulation : List.of(Insulation.PVC_70, Insulation.XLPE_90)) {
                    ofCase.put(
                            insulation,
                            SizeTable.of(
                                    rows,
                                    r -> r.word("material", ConductorMaterial.class) == material
                                            && r.word("insulation", Insulation.class) == insulation
                                            && r.number("loaded_conductors") == loaded,
                                    r -> Optional.of(new Current(r.number("ampacity")))));
                }
                tables.put(new Case(material, loaded), ofCase);
            }
        }
        return tables;
    }

    private static Map<Insulation, Map<InstallationMethod, SizeTable<Current>>> installation(String file, int loaded) {
        List<TableRow> rows = TableFile.rows(file);
        var tables = new EnumMap<Insulation, Map<InstallationMethod, SizeTable<Current>>>(Insulation.class);
        for (Insulation insulation : List.of(Insulation.PVC_70, Insulation.XLPE_90)) {
            tables.put(
                    insulation,
                    byMethod(
                            rows,
                            r -> r.word("insulation", Insulation.class) == insulation
                                    && r.number("loaded_conductors") == loaded));
        }
        return tables;
    }

    private static Map<InstallationMethod, SizeTable<Current>> byMethod(
            List<TableRow> rows, Predicate<TableRow> which) {
        var tables = new EnumMap<InstallationMethod, SizeTable<Current>>(InstallationMethod.class);
        for (InstallationMethod method : EnumSet.complementOf(EnumSet.of(InstallationMethod.F))) {
            String column = method.name().toLowerCase(Locale.ROOT);
            tables.put(method, SizeTable.of(rows, which, r -> Optional.of(new Current(r.number(column)))));
        }
        return tables;
    }
}
