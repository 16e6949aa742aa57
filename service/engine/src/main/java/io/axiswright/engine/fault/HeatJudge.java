package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.standard.AdiabaticFactor;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Judges whether conductors stand the heat of what their devices let through: I²t ≤ k²S² (IEC 60364-4-43 434.5.2). */
final class HeatJudge {

    private static final String CLAUSE = "IEC 60364-4-43 434.5.2";
    private static final double MM2 = 1e6;

    private final Insulation insulation;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<Source> sources = new LinkedHashSet<>();

    HeatJudge(Insulation insulation) {
        this.insulation = insulation;
    }

    List<Finding> findings() {
        return findings;
    }

    Set<Source> sources() {
        return sources;
    }

    /**
     * What the thinner of a circuit's conductors stands; absent where it has none.
     *
     * @param highest highest currents where its device stands
     */
    @Nullable
    JouleIntegral withstand(FaultCircuit circuit, FaultCurrents highest) {
        JouleIntegral line = withstand(circuit.material(), circuit.conductor());
        check(circuit, "", highest.largest(), line);
        JouleIntegral protective = withstand(circuit.material(), circuit.protectiveConductor());
        Current toEarth = highest.lineToEarth();
        if (toEarth != null) {
            check(circuit, " (protective conductor)", toEarth, protective);
        }
        return Stream.of(line, protective)
                .filter(Objects::nonNull)
                .min(Comparator.comparingDouble(JouleIntegral::si))
                .orElse(null);
    }

    private void check(FaultCircuit circuit, String which, Current fault, @Nullable JouleIntegral withstand) {
        ProtectiveDevice device = circuit.device();
        JouleIntegral through = device == null ? null : device.letThrough(fault);
        if (through != null && withstand != null && !Limits.within(through.si(), withstand.si())) {
            findings.add(FindingCode.FAULT_CONDUCTOR_HOT.at(
                    circuit.id() + which, circuit.pointer(), CLAUSE, through, withstand));
        }
    }

    private @Nullable JouleIntegral withstand(ConductorMaterial material, @Nullable ConductorSize size) {
        if (size == null) {
            return null;
        }
        Sourced<Double> k = AdiabaticFactor.of(material, insulation, size.area());
        sources.add(k.source());
        double root = k.value() * size.area().si() * MM2;
        return new JouleIntegral(root * root);
    }
}
