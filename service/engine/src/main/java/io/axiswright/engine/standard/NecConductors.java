package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Electrical data of North American copper conductors at 75 °C, NFPA 70 Chapter 9 Tables 8 and 9. */
public final class NecConductors {

    private static final double OHM_PER_KFT = 1 / 304.8;
    private static final List<TableRow> TABLE_8 = TableFile.rows("nec-chapter-9-table-8");
    private static final SizeTable<Integer> CIRCULAR_MILS =
            SizeTable.of(TABLE_8, r -> true, r -> Optional.of((int) r.number("circular_mils")));
    private static final SizeTable<LineResistance> DIRECT_CURRENT = SizeTable.of(
            TABLE_8, r -> true, r -> Optional.of(new LineResistance(r.number("resistance") * OHM_PER_KFT)));
    private static final Map<Raceway, SizeTable<LineImpedance>> TABLE_9 = table9();

    private NecConductors() {}

    /** Nominal area in circular mils (Table 8). */
    public static Optional<Sourced<Integer>> circularMils(ConductorSize size) {
        return CIRCULAR_MILS.at(size);
    }

    /** DC resistance of stranded copper at 75 °C (Table 8). */
    public static Optional<Sourced<LineResistance>> directCurrentResistance(ConductorSize size) {
        return DIRECT_CURRENT.at(size);
    }

    /** AC resistance and reactance to neutral at 75 °C and 60 Hz (Table 9), from 14 AWG up. */
    public static Optional<Sourced<LineImpedance>> impedance(ConductorSize size, Raceway raceway) {
        var table = TABLE_9.get(raceway);
        return table == null ? Optional.empty() : table.at(size);
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
