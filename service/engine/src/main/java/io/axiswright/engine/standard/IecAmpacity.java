package io.axiswright.engine.standard;

import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Ampacity of copper conductors under IEC, before correction. */
public final class IecAmpacity {

    private static final List<TableRow> INSTALLATION = TableFile.rows("iec-60364-5-52-ampacity");
    private static final Map<InstallationMethod, SizeTable<Current>> MACHINE =
            byMethod(TableFile.rows("iec-60204-1-table-6"), r -> true);
    private static final Map<Insulation, Map<InstallationMethod, SizeTable<Current>>> TWO_LOADED = installation(2);
    private static final Map<Insulation, Map<InstallationMethod, SizeTable<Current>>> THREE_LOADED = installation(3);

    private IecAmpacity() {}

    /** IEC 60204-1 Table 6: PVC on machines, three loaded conductors, ambient 40 °C, 0.75 to 120 mm². */
    public static Optional<Sourced<Current>> machine(ConductorSize size, InstallationMethod method) {
        var table = MACHINE.get(method);
        return table == null ? Optional.empty() : table.at(size);
    }

    /**
     * IEC 60364-5-52 Tables B.52.2 to B.52.5, B.52.10 and B.52.12: ambient 30 °C, 1 to 120 mm².
     *
     * @param insulation PVC_70 or XLPE_90
     * @param loadedConductors two, or three
     */
    public static Optional<Sourced<Current>> installation(
            ConductorSize size, InstallationMethod method, Insulation insulation, int loadedConductors) {
        var tables = (loadedConductors <= 2 ? TWO_LOADED : THREE_LOADED).get(insulation);
        var table = tables == null ? null : tables.get(method);
        return table == null ? Optional.empty() : table.at(size);
    }

    private static Map<Insulation, Map<InstallationMethod, SizeTable<Current>>> installation(int loaded) {
        var tables = new EnumMap<Insulation, Map<InstallationMethod, SizeTable<Current>>>(Insulation.class);
        for (Insulation insulation : List.of(Insulation.PVC_70, Insulation.XLPE_90)) {
            tables.put(
                    insulation,
                    byMethod(
                            INSTALLATION,
                            r -> r.word("insulation", Insulation.class) == insulation
                                    && r.number("loaded_conductors") == loaded));
        }
        return tables;
    }

    private static Map<InstallationMethod, SizeTable<Current>> byMethod(
            List<TableRow> rows, Predicate<TableRow> which) {
        var tables = new EnumMap<InstallationMethod, SizeTable<Current>>(InstallationMethod.class);
        for (InstallationMethod method : InstallationMethod.values()) {
            String column = method.name().toLowerCase(Locale.ROOT);
            tables.put(method, SizeTable.of(rows, which, r -> Optional.of(new Current(r.number(column)))));
        }
        return tables;
    }
}
