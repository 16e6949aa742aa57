package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Ampacity of conductors in North America: copper by NFPA 70 Table 310.16 from 14 AWG up, NFPA 79 Table 12.5.1 below; aluminium by
 * NFPA 70 Table 310.16, from 12 AWG up. Not more
 * than three current-carrying conductors, ambient 30 °C.
 */
public final class NecAmpacity {

    private static final Map<Insulation, SizeTable<Current>> NFPA_79 = read("nfpa-79-12-5-1");
    private static final Map<Insulation, SizeTable<Current>> NFPA_70 = read("nec-310-16");
    private static final Map<Insulation, SizeTable<Current>> ALUMINIUM = read("nec-310-16-aluminium");
    private static final List<ConductorSize> SIZES = sizes("nfpa-79-12-5-1", "nec-310-16");
    private static final List<ConductorSize> ALUMINIUM_SIZES = sizes("nec-310-16-aluminium");

    private NecAmpacity() {}

    /** All sizes, thinnest first. */
    public static List<ConductorSize> sizes(ConductorMaterial material) {
        return switch (material) {
            case COPPER -> SIZES;
            case ALUMINIUM -> ALUMINIUM_SIZES;
        };
    }

    /**
     * Ampacity before any correction.
     *
     * @param material what the conductor is made of
     * @param size the conductor
     * @param column the temperature column: NEC_60, NEC_75 or NEC_90
     * @return nothing where the table has no value
     */
    public static Optional<Sourced<Current>> of(ConductorMaterial material, ConductorSize size, Insulation column) {
        return switch (material) {
            case COPPER -> at(NFPA_70, size, column).or(() -> at(NFPA_79, size, column));
            case ALUMINIUM -> at(ALUMINIUM, size, column);
        };
    }

    /** That of copper by NFPA 79 Table 12.5.1 alone, which holds for the wiring of machines down to 30 AWG. */
    public static Optional<Sourced<Current>> machine(ConductorSize size, Insulation column) {
        return at(NFPA_79, size, column);
    }

    private static Optional<Sourced<Current>> at(
            Map<Insulation, SizeTable<Current>> table, ConductorSize size, Insulation column) {
        return Optional.ofNullable(table.get(column)).flatMap(rows -> rows.at(size));
    }

    private static Map<Insulation, SizeTable<Current>> read(String file) {
        List<TableRow> rows = TableFile.rows(file);
        var columns = new EnumMap<Insulation, SizeTable<Current>>(Insulation.class);
        columns.put(Insulation.NEC_60, column(rows, "ampacity_60"));
        columns.put(Insulation.NEC_75, column(rows, "ampacity_75"));
        columns.put(Insulation.NEC_90, column(rows, "ampacity_90"));
        return columns;
    }

    private static SizeTable<Current> column(List<TableRow> rows, String name) {
        return SizeTable.of(rows, r -> true, r -> {
            var amperes = r.optionalNumber(name);
            return amperes.isPresent() ? Optional.of(new Current(amperes.getAsDouble())) : Optional.empty();
        });
    }

    private static List<ConductorSize> sizes(String... files) {
        return Stream.of(files)
                .flatMap(file -> TableFile.rows(file).stream().map(TableRow::size))
                .distinct()
                .sorted()
                .toList();
    }
}
