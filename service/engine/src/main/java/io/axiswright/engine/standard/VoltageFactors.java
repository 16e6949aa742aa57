package io.axiswright.engine.standard;

import java.util.List;
import java.util.Optional;

/** The voltage factor c of the equivalent voltage source at low voltage (IEC 60909-0 Table 1). */
public final class VoltageFactors {

    private static final List<TableRow> ROWS = TableFile.rows("iec-60909-0-table-1");
    private static final StepTable<Double> HIGHEST = column("c_max");
    private static final StepTable<Double> LOWEST = column("c_min");

    private VoltageFactors() {}

    /** c_max, by how far the voltage may rise, as a fraction; nothing beyond the table. */
    public static Optional<Sourced<Double>> highest(double tolerance) {
        return HIGHEST.at(tolerance);
    }

    /** c_min, by how far the voltage may fall, as a fraction; nothing beyond the table. */
    public static Optional<Sourced<Double>> lowest(double tolerance) {
        return LOWEST.at(tolerance);
    }

    private static StepTable<Double> column(String name) {
        return StepTable.of(ROWS, r -> true, "tolerance_up_to", r -> Optional.of(r.number(name)));
    }
}
