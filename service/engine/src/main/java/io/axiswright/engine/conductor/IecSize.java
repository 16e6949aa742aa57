package io.axiswright.engine.conductor;

import io.axiswright.engine.design.InstallationMethod;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.IecAmpacity;
import io.axiswright.engine.standard.IecConductors;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.standard.Sourced;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/**
 * Everything the IEC tables say of one size laid in one way, joined once.
 *
 * @param size the size
 * @param area cross-section in m²
 * @param ampacity before correction
 * @param impedance hot, by construction
 * @param protective smallest protective conductor beside it
 */
record IecSize(
        ConductorSize size,
        double area,
        Sourced<Current> ampacity,
        Map<ConductorClass, Impedance> impedance,
        Optional<Sourced<ConductorSize>> protective) {

    private static final double REFERENCE_CELSIUS = 20;
    private static final Map<InstallationMethod, List<IecSize>> MACHINE =
            table(m -> s -> IecAmpacity.machine(s, m), Insulation.PVC_70);
    private static final Map<InstallationMethod, List<IecSize>> TWO_LOADED =
            table(m -> s -> IecAmpacity.installation(s, m, Insulation.XLPE_90, 2), Insulation.XLPE_90);
    private static final Map<InstallationMethod, List<IecSize>> THREE_LOADED =
            table(m -> s -> IecAmpacity.installation(s, m, Insulation.XLPE_90, 3), Insulation.XLPE_90);

    /** PVC by IEC 60204-1 Table 6, else IEC 60364-5-52; thinnest first. */
    static List<IecSize> of(Circuit circuit) {
        var table = circuit.insulation() == Insulation.PVC_70
                ? MACHINE
                : circuit.kind() == CircuitKind.AC_THREE_PHASE ? THREE_LOADED : TWO_LOADED;
        return Objects.requireNonNull(table.get(circuit.method()));
    }

    private static Map<InstallationMethod, List<IecSize>> table(
            Function<InstallationMethod, Function<ConductorSize, Optional<Sourced<Current>>>> ampacity,
            Insulation insulation) {
        var tables = new EnumMap<InstallationMethod, List<IecSize>>(InstallationMethod.class);
        for (InstallationMethod method : InstallationMethod.values()) {
            tables.put(
                    method,
                    IecConductors.sizes().stream()
                            .flatMap(s -> ampacity.apply(method).apply(s).stream()
                                    .map(a -> new IecSize(
                                            s, s.area().si(), a, hot(s, insulation), ProtectiveConductors.iec(s))))
                            .toList());
        }
        return tables;
    }

    /** R(T) = R20 · (1 + α · (T − 20 °C)) at the highest conductor temperature. */
    private static Map<ConductorClass, Impedance> hot(ConductorSize size, Insulation insulation) {
        double rise = Columns.celsius(insulation) - REFERENCE_CELSIUS;
        double factor = 1 + IecConductors.temperatureCoefficientAt20().value() * rise;
        var impedance = new EnumMap<ConductorClass, Impedance>(ConductorClass.class);
        for (ConductorClass construction : ConductorClass.values()) {
            var cold = IecConductors.resistanceAt20(size, construction).orElseThrow();
            impedance.put(
                    construction,
                    new Impedance(
                            cold.value().si() * factor,
                            IecConductors.reactance().value().si(),
                            cold.source()));
        }
        return impedance;
    }
}
