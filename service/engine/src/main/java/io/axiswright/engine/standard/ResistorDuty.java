package io.axiswright.engine.standard;

import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Time;
import java.util.List;

/**
 * Conductors to power resistors, NFPA 70 Table 430.29. The table is written for the resistors of direct-current motors; that
 * the braking resistors of drives follow it is common practice, no source.
 */
public final class ResistorDuty {

    private record Row(double on, double off, Sourced<Ratio> multiple) {}

    private static final List<Row> ROWS = TableFile.rows("nec-430-29").stream()
            .map(r -> new Row(r.upTo("on_up_to"), r.number("off_from"), r.sourced(new Ratio(r.number("multiple")))))
            .toList();

    private ResistorDuty() {}

    /** Ampacity as a multiple of the resistor's current, of the first row whose duty is no lighter. */
    public static Sourced<Ratio> multiple(Time on, Time off) {
        return ROWS.stream()
                .filter(row -> Limits.within(on.si(), row.on()) && Limits.within(row.off(), off.si()))
                .findFirst()
                .map(Row::multiple)
                .orElseThrow();
    }

    /** The same for a current that does not pause. */
    public static Sourced<Ratio> continuous() {
        return ROWS.getLast().multiple();
    }
}
