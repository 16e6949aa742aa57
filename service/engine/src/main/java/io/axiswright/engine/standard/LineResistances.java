package io.axiswright.engine.standard;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.LineResistance;
import java.util.Optional;

/** Resistance of flexible copper and solid or stranded aluminium conductors to alternating current at any temperature, by the tables of a code. */
public final class LineResistances {

    /** IEC 60228 states resistances at this temperature, in °C. */
    private static final double IEC_CELSIUS = 20;

    /** NFPA 70 Chapter 9 Tables 8 and 9 state them at this one, in °C. */
    private static final double NEC_CELSIUS = 75;

    private LineResistances() {}

    /**
     * R(T) = R(T0) · (1 + α (T − 20 °C)) / (1 + α (T0 − 20 °C)); nothing for a size the tables do not have.
     *
     * @param celsius temperature of the conductor in °C
     */
    public static Optional<Sourced<LineResistance>> of(
            CodeBasis basis, ConductorMaterial material, ConductorSize size, double celsius) {
        return switch (basis) {
            case IEC_60204_1 ->
                IecConductors.resistanceAt20(material, size, ConductorClass.CLASS_5)
                        .map(r -> at(r, material, IEC_CELSIUS, celsius));
            case NFPA_79 ->
                // Table 9 starts at 14 AWG; in thinner wires direct and alternating current meet the same resistance
                NecConductors.impedance(material, size, Raceway.STEEL)
                        .map(z -> new Sourced<>(z.value().resistance(), z.source()))
                        .or(() -> NecConductors.directCurrentResistance(material, size))
                        .map(r -> at(r, material, NEC_CELSIUS, celsius));
        };
    }

    private static Sourced<LineResistance> at(
            Sourced<LineResistance> stated, ConductorMaterial material, double statedCelsius, double celsius) {
        double alpha = IecConductors.temperatureCoefficientAt20(material).value();
        double factor = (1 + alpha * (celsius - 20)) / (1 + alpha * (statedCelsius - 20));
        return new Sourced<>(new LineResistance(stated.value().si() * factor), stated.source());
    }
}
