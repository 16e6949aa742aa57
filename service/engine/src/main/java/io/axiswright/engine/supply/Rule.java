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
