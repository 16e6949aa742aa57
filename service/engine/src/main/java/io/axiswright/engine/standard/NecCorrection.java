package io.axiswright.engine.standard;

import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Correction of North American ampacities for ambient temperature and for conductors run together. */
public final class NecCorrection {

    private static final Map<Insulation, StepTable<Ratio>> AMBIENT = ambientTables();
    private static final StepTable<Ratio> TOGETHER = StepTable.of(
            TableFile.rows("nec-310-15-c-1"),
            r -> true,
            "conductors_up_to",
            r -> Optional.of(new Ratio(r.number("factor"))));

    private NecCorrection() {}

    /**
     * Ambient correction (NFPA 70 Table 310.15(B)(1)(1)).
     *
     * @param column temperature column of the ampacity: NEC_60, NEC_75 or NEC_90
     * @param ambient the air along the route
     * @return nothing where the column may not be used at that ambient
     */
    public static Optional<Sourced<Ratio>> ambient(Insulation column, Temperature ambient) {
        var table = AMBIENT.get(column);
        return table == null ? Optional.empty() : table.at(Limits.celsius(ambient));
    }

    /** The highest ambient at which a column may be used; nothing for an insulation that has no column. */
    public static Optional<Temperature> highestAmbient(Insulation column) {
        return Optional.ofNullable(AMBIENT.get(column)).map(t -> Limits.ofCelsius(t.end()));
    }

    /** Adjustment for a number of current-carrying conductors together (NFPA 70 Table 310.15(C)(1)). */
    public static Optional<Sourced<Ratio>> together(int currentCarryingConductors) {
        return TOGETHER.at(currentCarryingConductors);
    }

    private static Map<Insulation, StepTable<Ratio>> ambientTables() {
        List<TableRow> rows = TableFile.rows("nec-310-15-b-1");
        var tables = new EnumMap<Insulation, StepTable<Ratio>>(Insulation.class);
        tables.put(Insulation.NEC_60, Factors.byAmbient(rows, "factor_60"));
        tables.put(Insulation.NEC_75, Factors.byAmbient(rows, "factor_75"));
        tables.put(Insulation.NEC_90, Factors.byAmbient(rows, "factor_90"));
        return tables;
    }
}
