package io.axiswright.engine.standard;

import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Ampacity of copper conductors in North America: NFPA 70 Table 310.16 from 14 AWG up, NFPA 79 Table 12.5.1 below; not more
 * than three current-carrying conductors, ambient 30 °C.
 */
public final class NecAmpacity {

    private static final Map<Insulation, SizeTable<Current>> NFPA_79 = read("nfpa-79-12-5-1");
    private static final Map<Insulation, SizeTable<Current>> NFPA_70 = read("nec-310-16");
    private static final List<ConductorSize> SIZES = sizesOfBoth();

    private NecAmpacity() {}

    /** All sizes, thinnest first. */
    public static List<ConductorSize> sizes() {
        return SIZES;
    }

    /**
     * Ampacity before any correction.
     *
     * @param size the conductor
     * @param column the temperature column: NEC_60, NEC_75 or NEC_90
     * @return nothing where the table has no value
     */
    public static Optional<Sourced<Current>> of(ConductorSize size, Insulation column) {
        var nfpa70 = NFPA_70.get(column);
        var nfpa79 = NFPA_79.get(column);
        if (nfpa70 == null || nfpa79 == null) {
            return Optional.empty();
        }
        return nfpa70.at(size).or(() -> nfpa79.at(size));
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

    private static List<ConductorSize> sizesOfBoth() {
        return Stream.of("nfpa-79-12-5-1", "nec-310-16")
                .flatMap(file -> TableFile.rows(file).stream().map(TableRow::size))
                .distinct()
                .sorted()
                .toList();
    }
}
