package io.axiswright.engine.standard;

import java.util.List;
import java.util.OptionalDouble;

/** The highest harmonic currents of equipment above 16 A and up to 75 A per line, by short-circuit ratio (IEC 61000-3-12). */
public enum EquipmentCurrentLimits {
    /** Table 2: any equipment. */
    ANY("2"),
    /** Table 3: balanced three-phase equipment. */
    BALANCED("3"),
    /** Table 4: balanced three-phase equipment of rectifiers with chokes. */
    BALANCED_WITH_CHOKES("4");

    private static final double PERCENT = 0.01;

    private final List<TableRow> rows;

    EquipmentCurrentLimits(String table) {
        this.rows = TableFile.rows("iec-61000-3-12").stream()
                .filter(row -> row.text("table").equals(table))
                .toList();
    }

    /** The table with its edition, and how well it is known. */
    public Source source() {
        return rows.getFirst().sourced(0).source();
    }

    /**
     * The limit of a quantity, as a share of the reference current.
     *
     * @param quantity {@code i3} to {@code i13}, {@code thc} or {@code pwhc}
     * @param ratio short-circuit ratio
     * @return nothing where the table sets none
     */
    public OptionalDouble limit(String quantity, double ratio) {
        if (rows.getFirst().optionalNumber(quantity).isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(between("ratio", ratio, quantity) * PERCENT);
    }

    /** The lowest short-circuit ratio at which a share keeps its limit; nothing where none suffices. The quantity is limited. */
    public OptionalDouble ratioFor(String quantity, double share) {
        return Limits.within(share, rows.getLast().number(quantity) * PERCENT)
                ? OptionalDouble.of(between(quantity, share / PERCENT, "ratio"))
                : OptionalDouble.empty();
    }

    private double between(String from, double value, String to) {
        for (int k = 1; k < rows.size(); k++) {
            TableRow low = rows.get(k - 1);
            TableRow high = rows.get(k);
            if (value < high.number(from)) {
                double part = (value - low.number(from)) / (high.number(from) - low.number(from));
                return low.number(to) + Math.max(0, part) * (high.number(to) - low.number(to));
            }
        }
        return rows.getLast().number(to);
    }
}
