package io.axiswright.engine.conductor;

import io.axiswright.engine.design.ConductorMaterial;
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
import java.util.HashMap;
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
    /** What decides the table. */
    private record Case(ConductorMaterial material, Insulation insulation, int loaded) {}

    private static final Map<Case, Map<InstallationMethod, List<IecSize>>> TABLES = tables();

    /** PVC by IEC 60204-1 Table 6, which is for three loaded conductors, else IEC 60364-5-52; thinnest first. */
    static List<IecSize> of(Circuit circuit) {
        boolean three = IecConditions.machine(circuit) || circuit.kind() == CircuitKind.AC_THREE_PHASE;
        var table = TABLES.get(new Case(circuit.material(), circuit.insulation(), three ? 3 : 2));
        return Objects.requireNonNull(Objects.requireNonNull(table).get(circuit.method()));
    }

    private static Map<Case, Map<InstallationMethod, List<IecSize>>> tables() {
        var tables = new HashMap<Case, Map<InstallationMethod, List<IecSize>>>();
        for (ConductorMaterial material : ConductorMaterial.values()) {
            tables.put(
                    new Case(material, Insulation.PVC_70, 3),
                    table(m -> s -> IecAmpacity.machine(material, s, m), material, Insulation.PVC_70));
            for (int loaded : List.of(2, 3)) {
                tables.put(
                        new Case(material, Insulation.XLPE_90, loaded),
                        table(
                                m -> s -> IecAmpacity.installation(material, s, m, Insulation.XLPE_90, loaded),
                                material,
                                Insulation.XLPE_90));
            }
        }
        return tables;
    }

    private static Map<InstallationMethod, List<IecSize>> table(
            Function<InstallationMethod, Function<ConductorSize, Optional<Sourced<Current>>>> ampacity,
            ConductorMaterial material,
            Insulation insulation) {
        var tables = new EnumMap<InstallationMethod, List<IecSize>>(InstallationMethod.class);
        for (InstallationMethod method : InstallationMethod.values()) {
            tables.put(
                    method,
                    IecConductors.sizes(material).stream()
                            .flatMap(s -> ampacity.apply(method).apply(s).stream()
                                    .map(a -> new IecSize(
                                            s,
                                            s.area().si(),
                                            a,
                                            hot(material, s, insulation),
                                            ProtectiveConductors.iec(s))))
                            .toList());
        }
        return tables;
    }

    /** R(T) = R20 · (1 + α · (T − 20 °C)) at the highest conductor temperature. */
    private static Map<ConductorClass, Impedance> hot(
            ConductorMaterial material, ConductorSize size, Insulation insulation) {
        double rise = Columns.celsius(insulation) - REFERENCE_CELSIUS;
        double factor = 1 + IecConductors.temperatureCoefficientAt20(material).value() * rise;
        var impedance = new EnumMap<ConductorClass, Impedance>(ConductorClass.class);
        for (ConductorClass construction : ConductorClass.values()) {
            var cold =
                    IecConductors.resistanceAt20(material, size, construction).orElseThrow();
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
