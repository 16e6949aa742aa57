package io.axiswright.engine.supply;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.ResourceTable;
import java.util.List;

/** The numbers the codes set for an AC supply, each with its clause; read from the table of rules. */
enum Rule {
    /** On the largest motor load of a branch circuit. */
    LARGEST_LOAD_FACTOR,
    /** On a load that runs without pause. */
    CONTINUOUS_FACTOR,
    /** On the largest load of a feeder. */
    FEEDER_LARGEST_FACTOR,
    /** AC voltage up to which protection by low voltage is possible at all, in V. */
    TOUCH_VOLTAGE,
    /** Voltage to earth that the frames may keep while a residual-current device does not trip (TT), in V. */
    RESIDUAL_TOUCH_VOLTAGE,
    /** Power factor of a three-phase rectifier without choke, at which a DC bus draws from the mains. */
    RECTIFIER_POWER_FACTOR_THREE_PHASE,
    /** The same of a one-phase rectifier. */
    RECTIFIER_POWER_FACTOR_ONE_PHASE,
    /** How many times the largest branch fuse the feeder fuse must be rated for only the branch fuse to blow. */
    FUSE_SELECTIVITY_RATIO,
    /** Rating of the residual-current devices that protect against fire, in A. */
    RESIDUAL_CURRENT_FIRE,
    /** Rating of the supply disconnecting device over the sum of the full-load currents. */
    DISCONNECT_FACTOR,
    /** Inrush of a transformer over its rated primary current, rms over 0.1 s. */
    TRANSFORMER_INRUSH,
    /** Lowest usual primary tap of a transformer, as a share of its nominal voltage. */
    TRANSFORMER_LOWEST_TAP,
    /** Its highest. */
    TRANSFORMER_HIGHEST_TAP,
    /** From one tap to the next. */
    TRANSFORMER_TAP_STEP,
    /** How far the mains may lie from a load's rated voltage, as a share of it. */
    VOLTAGE_WINDOW,
    /** Rating of the residual-current devices that protect people, in A. */
    RESIDUAL_CURRENT_RATING,
    /** Share of a residual-current device's rating the standing leakage may use up. */
    RESIDUAL_CURRENT_SHARE;

    /**
     * A rule's number.
     *
     * @param value in the SI unit of the table
     * @param clause where it stands, marked where no public page confirms it
     */
    record Entry(double value, String clause) {}

    /** Where it stands that everything must bear the fault current at its place. */
    static final String FAULT_RATING = "NFPA 70 110.9, 110.10; IEC 60364-4-43 434.5.1 (from memory)";

    private static final List<NamedCsvRecord> ROWS = ResourceTable.rows("/supply/rules.csv");

    /** The number under a code basis. */
    Entry under(CodeBasis basis) {
        return ROWS.stream()
                .filter(row -> row.getField("rule").equals(name()))
                .filter(row -> row.getField("basis").equals("ANY")
                        || row.getField("basis").equals(basis.name()))
                .map(row -> new Entry(Double.parseDouble(row.getField("value")), clause(row)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the table of rules lacks " + name()));
    }

    private static String clause(NamedCsvRecord row) {
        String clause = row.getField("clause");
        return row.getField("confidence").equals("FROM_MEMORY") ? clause + " (from memory)" : clause;
    }
}
