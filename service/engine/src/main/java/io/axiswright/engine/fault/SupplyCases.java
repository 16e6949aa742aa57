package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import io.axiswright.engine.standard.VoltageFactors;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The supply at its highest and at its lowest fault currents.
 *
 * @param highest with c_max and the impedance of the highest fault current
 * @param lowest with c_min and the impedance of the lowest fault current
 * @param sources where the voltage factors come from
 * @param derivations how the impedances came about
 */
record SupplyCases(SupplyCase highest, SupplyCase lowest, List<Source> sources, List<Derivation> derivations) {

    static final String METHOD = "IEC 60909-0:2016 equivalent voltage source (from memory)";

    /** IEC 60909-0, of network feeders whose resistance is not known; from memory. */
    private static final double ASSUMED_RATIO = 0.1;

    private static final double SQRT_3 = Math.sqrt(3);

    static SupplyCases of(CodeBasis basis, Mains mains) {
        var sources = new ArrayList<Source>();
        double high = factor(basis, VoltageFactors.highest(mains.highTolerance()), 1 + mains.highTolerance(), sources);
        double low = factor(basis, VoltageFactors.lowest(mains.lowTolerance()), 1 - mains.lowTolerance(), sources);
        double volts = mains.voltage().si();
        double toNeutral = lineToNeutral(mains).si();
        double toLine = toNeutral == volts ? 0 : volts;
        double most = high * toNeutral / mains.prospectiveFaultCurrent().si();
        Current least = mains.minimumFaultCurrent();
        double weakest = least == null ? most : low * toNeutral / least.si();
        Double ratio = mains.faultResistanceRatio();
        var highest = new SupplyCase(
                high * toNeutral,
                high * toLine,
                most,
                earthLoop(mains, most, false),
                Objects.requireNonNullElse(ratio, ASSUMED_RATIO));
        var lowest = new SupplyCase(low * toNeutral, low * toLine, weakest, earthLoop(mains, weakest, true), ratio);
        var derivations = List.of(
                impedance("highest fault current", high, toNeutral, mains.prospectiveFaultCurrent(), most),
                least == null
                        ? impedance("lowest fault current", high, toNeutral, mains.prospectiveFaultCurrent(), weakest)
                        : impedance("lowest fault current", low, toNeutral, least, weakest));
        return new SupplyCases(highest, lowest, sources, derivations);
    }

    /** Nominal voltage of a line to neutral, or to where the neutral would be. */
    static Voltage lineToNeutral(Mains mains) {
        double volts = mains.voltage().si();
        return new Voltage(
                switch (mains.system()) {
                    case ONE_PHASE_TWO_WIRE -> volts;
                    case ONE_PHASE_THREE_WIRE -> volts / 2;
                    case THREE_PHASE_THREE_WIRE, THREE_PHASE_FOUR_WIRE -> volts / SQRT_3;
                });
    }

    static SystemEarthing earthing(Mains mains) {
        return Objects.requireNonNullElse(mains.earthing(), SystemEarthing.TN);
    }

    /** North American practice works with the nominal voltage; common practice, no source. */
    private static double factor(
            CodeBasis basis, Optional<Sourced<Double>> table, double beyond, List<Source> sources) {
        if (basis == CodeBasis.NFPA_79) {
            return 1;
        }
        table.ifPresent(c -> sources.add(c.source()));
        return table.map(Sourced::value).orElse(beyond);
    }

    /** In TN, near its transformer, a fault to earth is no weaker than one of three lines (Z0 = Z1). */
    private static double earthLoop(Mains mains, double line, boolean weakest) {
        Resistance stated = mains.earthFaultLoopImpedance();
        return switch (earthing(mains)) {
            case TN -> weakest && stated != null ? stated.si() : line;
            case TT -> stated == null ? Double.NaN : stated.si();
            case IT -> Double.NaN;
        };
    }

    private static Derivation impedance(String which, double c, double toNeutral, Current fault, double ohms) {
        return new Derivation(
                "supply, " + which,
                "Z_Q",
                "c U_0 / I_k",
                Derivation.inputs("c", new Ratio(c), "U_0", new Voltage(toNeutral), "I_k", fault),
                METHOD,
                new Resistance(ohms));
    }
}
