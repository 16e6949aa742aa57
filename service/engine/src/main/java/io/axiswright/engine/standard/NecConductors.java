package io.axiswright.engine.standard;

import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** Electrical data of North American conductors at 75 °C, NFPA 70 Chapter 9 Tables 8 and 9. */
public final class NecConductors {

    private static final double OHM_PER_KFT = 1 / 304.8;
    private static final List<TableRow> TABLE_8 = TableFile.rows("nec-chapter-9-table-8");
    private static final SizeTable<Integer> CIRCULAR_MILS =
            SizeTable.of(TABLE_8, r -> true, r -> Optional.of((int) r.number("circular_mils")));
    private static final SizeTable<LineResistance> COPPER = resistance(TABLE_8, r -> true);
    private static final SizeTable<LineResistance> ALUMINIUM =
            resistance(TableFile.rows("nec-chapter-9-table-8-aluminium"), r -> true);
    private static final Map<Raceway, SizeTable<LineImpedance>> TABLE_9 = table9();
    private static final Map<Raceway, SizeTable<LineResistance>> TABLE_9_ALUMINIUM = table9Aluminium();

    private NecConductors() {}

    /** Nominal area in circular mils (Table 8). */
    public static Optional<Sourced<Integer>> circularMils(ConductorSize size) {
        return CIRCULAR_MILS.at(size);
    }

    /** DC resistance of stranded conductors at 75 °C (Table 8); aluminium from 12 AWG up. */
    public static Optional<Sourced<LineResistance>> directCurrentResistance(
            ConductorMaterial material, ConductorSize size) {
        return switch (material) {
            case COPPER -> COPPER.at(size);
            case ALUMINIUM -> ALUMINIUM.at(size);
        };
    }

    /**
     * AC resistance and reactance to neutral at 75 °C and 60 Hz (Table 9), copper from 14 AWG up, aluminium from 12 AWG up. The
     * table has one reactance for both.
     */
    public static Optional<Sourced<LineImpedance>> impedance(
            ConductorMaterial material, ConductorSize size, Raceway raceway) {
        var copper = Optional.ofNullable(TABLE_9.get(raceway)).flatMap(table -> table.at(size));
        return switch (material) {
            case COPPER -> copper;
            case ALUMINIUM ->
                copper.flatMap(line -> Optional.ofNullable(TABLE_9_ALUMINIUM.get(raceway))
                        .flatMap(table -> table.at(size))
                        .map(aluminium -> new Sourced<>(
                                new LineImpedance(
                                        aluminium.value(), line.value().reactance()),
                                aluminium.source())));
        };
    }

    private static SizeTable<LineResistance> resistance(List<TableRow> rows, Predicate<TableRow> which) {
        return SizeTable.of(rows, which, r -> Optional.of(new LineResistance(r.number("resistance") * OHM_PER_KFT)));
    }

    private static Map<Raceway, SizeTable<LineResistance>> table9Aluminium() {
        List<TableRow> rows = TableFile.rows("nec-chapter-9-table-9-aluminium");
        var tables = new EnumMap<Raceway, SizeTable<LineResistance>>(Raceway.class);
        for (Raceway raceway : Raceway.values()) {
            tables.put(raceway, resistance(rows, r -> r.word("raceway", Raceway.class) == raceway));
        }
        return tables;
    }

    private static Map<Raceway, SizeTable<LineImpedance>> table9() {
        List<TableRow> rows = TableFile.rows("nec-chapter-9-table-9");
        var tables = new EnumMap<Raceway, SizeTable<LineImpedance>>(Raceway.class);
        for (Raceway raceway : Raceway.values()) {
            tables.put(
                    raceway,
                    SizeTable.of(
                            rows,
                            r -> r.word("raceway", Raceway.class) == raceway,
                            r -> Optional.of(new LineImpedance(
                                    new LineResistance(r.number("resistance") * OHM_PER_KFT),
                                    new LineResistance(r.number("reactance") * OHM_PER_KFT)))));
        }
        return tables;
    }
}
