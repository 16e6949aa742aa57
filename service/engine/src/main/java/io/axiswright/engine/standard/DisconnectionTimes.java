package io.axiswright.engine.standard;

import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Within what time a fault to earth must be disconnected (IEC 60364-4-41 411.3.2). */
public final class DisconnectionTimes {

    /** Above this rating the times of the table do not apply (411.3.2.2), in A. */
    private static final double FINAL_CIRCUIT = 32;

    /** Up to this voltage to earth nothing need be disconnected (411.3.2.5), in V. */
    private static final double HARMLESS = 50;

    private static final List<TableRow> ROWS = TableFile.rows("iec-60364-4-41-table-41-1");
    private static final Map<SystemEarthing, StepTable<Time>> FINAL = column("final_circuit");
    private static final Map<SystemEarthing, StepTable<Time>> OTHER = column("other_circuit");

    private DisconnectionTimes() {}

    /** Longest time for a circuit that feeds loads, by the rating of its device; nothing where no time is asked for. */
    public static Optional<Sourced<Time>> ofFinalCircuit(SystemEarthing earthing, Voltage toEarth, Current rating) {
        return at(Limits.within(rating.si(), FINAL_CIRCUIT) ? FINAL : OTHER, earthing, toEarth);
    }

    /** Longest time for a circuit that feeds others; nothing where no time is asked for. */
    public static Optional<Sourced<Time>> ofDistributionCircuit(SystemEarthing earthing, Voltage toEarth) {
        return at(OTHER, earthing, toEarth);
    }

    private static Optional<Sourced<Time>> at(
            Map<SystemEarthing, StepTable<Time>> times, SystemEarthing earthing, Voltage toEarth) {
        return Optional.ofNullable(times.get(earthing))
                .filter(table -> !Limits.within(toEarth.si(), HARMLESS))
                .flatMap(table -> table.at(toEarth.si()));
    }

    private static Map<SystemEarthing, StepTable<Time>> column(String name) {
        var tables = new EnumMap<SystemEarthing, StepTable<Time>>(SystemEarthing.class);
        // after a first fault in IT nothing is disconnected
        for (SystemEarthing earthing : List.of(SystemEarthing.TN, SystemEarthing.TT)) {
            tables.put(
                    earthing,
                    StepTable.of(
                            ROWS,
                            r -> r.word("earthing", SystemEarthing.class) == earthing,
                            "voltage_to_earth_up_to",
                            r -> Optional.of(new Time(r.number(name)))));
        }
        return tables;
    }
}
