package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.AdiabaticFactor;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Sourced;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Adiabatic heating of a conductor by a fault, up to 5 s (IEC 60364-4-43 434.5.2). */
final class FaultWithstand {

    static final String CLAUSE = "IEC 60364-4-43 434.5.2";
    private static final double SQUARE_METRES_PER_MM2 = 1e-6;

    private FaultWithstand() {}

    /**
     * Smallest cross-section S = I·√t / k, with the square root over I²t only, not over k.
     *
     * @param amperes fault current in A
     * @param seconds clearing time in s
     * @param k adiabatic factor in A·s^½/mm²
     * @return the section in m²
     */
    static double section(double amperes, double seconds, double k) {
        return amperes * Math.sqrt(seconds) / k * SQUARE_METRES_PER_MM2;
    }

    /** The factor k of a conductor of the circuit, by its cross-section in m². */
    static Sourced<Double> factor(Circuit circuit, double sectionOfSize) {
        return AdiabaticFactor.of(circuit.material(), circuit.insulation(), new Area(sectionOfSize));
    }

    /** The section the circuit's fault needs; nothing where no fault is stated. */
    static Optional<Area> needed(Circuit circuit, double sectionOfSize) {
        Current fault = circuit.prospectiveFaultCurrent();
        Time clearing = circuit.clearingTime();
        if (fault == null || clearing == null) {
            return Optional.empty();
        }
        double k = factor(circuit, sectionOfSize).value();
        return Optional.of(new Area(section(fault.si(), clearing.si(), k)));
    }

    static @Nullable Breach breach(Circuit circuit, double sectionOfSize) {
        return needed(circuit, sectionOfSize)
                .filter(needed -> !Limits.within(needed.si(), sectionOfSize))
                .map(needed -> new Breach(Limit.FAULT_WITHSTAND, needed, new Area(sectionOfSize), CLAUSE))
                .orElse(null);
    }
}
