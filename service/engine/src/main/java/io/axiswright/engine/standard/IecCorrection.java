package io.axiswright.engine.standard;

import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Temperature;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Correction of IEC ampacities for ambient temperature and grouping. */
public final class IecCorrection {

    private static final StepTable<Ratio> MACHINE_AMBIENT =
            Factors.byAmbient(TableFile.rows("iec-60204-1-table-d-1"), "factor");
    private static final Map<InstallationMethod, StepTable<Ratio>> MACHINE_GROUPING =
            Factors.byCircuits(TableFile.rows("iec-60204-1-table-d-2"));
    private static final Map<Insulation, StepTable<Ratio>> AMBIENT = ambientTables();
    private static final Map<InstallationMethod, StepTable<Ratio>> GROUPING =
            Factors.byCircuits(TableFile.rows("iec-60364-5-52-table-b-52-17"));

    private IecCorrection() {}

    /** For IEC 60204-1 Table 6, base 40 °C (Table D.1); the 30 °C row also below 30 °C, nothing above 60 °C. */
    public static Optional<Sourced<Ratio>> machineAmbient(Temperature ambient) {
        return MACHINE_AMBIENT.at(Limits.celsius(ambient));
    }

    /** The highest ambient of Table D.1. */
    public static Temperature highestMachineAmbient() {
        return Limits.ofCelsius(MACHINE_AMBIENT.end());
    }

    /** The highest ambient of Table B.52.14; nothing for an insulation that has no column. */
    public static Optional<Temperature> highestAmbient(Insulation insulation) {
        return Optional.ofNullable(AMBIENT.get(insulation)).map(t -> Limits.ofCelsius(t.end()));
    }

    /** The most circuits together for which Table B.52.17 has a row; 0 for a method without rows. */
    public static int mostCircuits(InstallationMethod method) {
        var table = GROUPING.get(method);
        return table == null ? 0 : (int) table.end();
    }

    /** For IEC 60204-1 Table 6 (Table D.2, to nine circuits); above that Table B.52.17 of IEC 60364-5-52. */
    public static Optional<Sourced<Ratio>> machineGrouping(InstallationMethod method, int circuits) {
        return at(MACHINE_GROUPING, method, circuits).or(() -> grouping(method, circuits));
    }

    /** For IEC 60364-5-52, base 30 °C (Table B.52.14); the 10 °C row also below 10 °C, nothing beyond the table. */
    public static Optional<Sourced<Ratio>> ambient(Insulation insulation, Temperature ambient) {
        var table = AMBIENT.get(insulation);
        return table == null ? Optional.empty() : table.at(Limits.celsius(ambient));
    }

    /** For IEC 60364-5-52 (Table B.52.17), to twenty circuits. */
    public static Optional<Sourced<Ratio>> grouping(InstallationMethod method, int circuits) {
        return at(GROUPING, method, circuits);
    }

    private static Optional<Sourced<Ratio>> at(
            Map<InstallationMethod, StepTable<Ratio>> tables, InstallationMethod method, int circuits) {
        var table = tables.get(method);
        return table == null ? Optional.empty() : table.at(circuits);
    }

    private static Map<Insulation, StepTable<Ratio>> ambientTables() {
        List<TableRow> rows = TableFile.rows("iec-60364-5-52-table-b-52-14");
        var tables = new EnumMap<Insulation, StepTable<Ratio>>(Insulation.class);
        tables.put(Insulation.PVC_70, Factors.byAmbient(rows, "factor_pvc_70"));
        tables.put(Insulation.XLPE_90, Factors.byAmbient(rows, "factor_xlpe_90"));
        return tables;
    }
}
