package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import io.axiswright.engine.standard.ConductorClass;
import io.axiswright.engine.standard.IecConductors;
import io.axiswright.engine.standard.LineImpedance;
import io.axiswright.engine.standard.NecConductors;
import io.axiswright.engine.standard.Raceway;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Impedance of conductors at one temperature; remembers where it read. */
final class ConductorImpedances {

    /** IEC 60228 states resistances at this temperature, in °C. */
    private static final double IEC_CELSIUS = 20;

    /** NFPA 70 Chapter 9 Tables 8 and 9 state them at this one, in °C. */
    private static final double NEC_CELSIUS = 75;

    private record Wire(ConductorMaterial material, ConductorSize size) {}

    private final CodeBasis basis;
    private final double celsius;
    private final Raceway raceway;
    private final Map<Wire, Optional<LineImpedance>> known = new HashMap<>();
    private final Set<Source> sources = new LinkedHashSet<>();

    /**
     * Conductors at one temperature.
     *
     * @param basis whose tables
     * @param celsius temperature of the conductors in °C
     * @param raceway what raceway they lie in, where the tables make a difference
     */
    ConductorImpedances(CodeBasis basis, double celsius, Raceway raceway) {
        this.basis = basis;
        this.celsius = celsius;
        this.raceway = raceway;
    }

    /** What was read so far. */
    Set<Source> sources() {
        return sources;
    }

    /**
     * The conductors of a circuit along some metres; nothing where the tables have none of its lines.
     *
     * @param metres their length; no conductors are needed over none
     */
    Optional<Path> along(FaultCircuit circuit, double metres) {
        if (metres == 0) {
            return Optional.of(new Path(Impedance.NONE, circuit.neutral() ? Impedance.NONE : null, Impedance.NONE));
        }
        return of(circuit.material(), circuit.conductor()).map(perMetre -> {
            Impedance line = Impedance.of(perMetre, metres);
            return new Path(
                    line,
                    circuit.neutral() ? line : null,
                    of(circuit.material(), circuit.protectiveConductor())
                            .map(pe -> Impedance.of(pe, metres))
                            .orElse(null));
        });
    }

    private Optional<LineImpedance> of(ConductorMaterial material, @Nullable ConductorSize size) {
        return size == null ? Optional.empty() : known.computeIfAbsent(new Wire(material, size), this::look);
    }

    private Optional<LineImpedance> look(Wire wire) {
        return switch (basis) {
            case IEC_60204_1 ->
                IecConductors.resistanceAt20(wire.material(), wire.size(), ConductorClass.CLASS_5)
                        .map(r -> new LineImpedance(at(wire, read(r), IEC_CELSIUS), read(IecConductors.reactance())));
            case NFPA_79 ->
                NecConductors.impedance(wire.material(), wire.size(), raceway)
                        .map(this::read)
                        .map(z -> new LineImpedance(at(wire, z.resistance(), NEC_CELSIUS), z.reactance()));
        };
    }

    /** R(T) = R(T0) · (1 + α (T − 20 °C)) / (1 + α (T0 − 20 °C)). */
    private LineResistance at(Wire wire, LineResistance stated, double statedCelsius) {
        double alpha = read(IecConductors.temperatureCoefficientAt20(wire.material()));
        return new LineResistance(stated.si() * (1 + alpha * (celsius - 20)) / (1 + alpha * (statedCelsius - 20)));
    }

    private <T> T read(Sourced<T> sourced) {
        sources.add(sourced.source());
        return sourced.value();
    }
}
