package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Resistance;
import java.util.Objects;

/**
 * Faults at the secondary terminals of a transformer. Only the magnitude of its impedance is stated: the currents are
 * highest where it stands at right angles to that ahead of it, lowest where both have one angle.
 *
 * @param basis the code to follow
 * @param mains what feeds its primary
 */
record TransformerFaults(CodeBasis basis, Mains mains) {

    private static final double SQRT_3 = Math.sqrt(3);

    /** (Z_1 + Z_2) / 3 of what lies ahead of a delta: its zero-sequence impedance takes no part. */
    private static final double AHEAD_OF_EARTH_FAULT = 2.0 / 3;

    /** The currents where they are highest. */
    FaultCurrents highest(FaultTransformer transformer, SupplyCase supply, Path panel) {
        double own = own(transformer) * correction(transformer, factor(supply));
        double ahead = ahead(transformer, supply, panel);
        double toEarth = transformer.feed() == Feed.THREE_PHASE ? AHEAD_OF_EARTH_FAULT * ahead : ahead;
        return currents(transformer, factor(supply), Math.hypot(ahead, own), Math.hypot(toEarth, own));
    }

    /** The currents where they are lowest. */
    FaultCurrents lowest(FaultTransformer transformer, SupplyCase supply, Path panel) {
        double ohms = ahead(transformer, supply, panel) + own(transformer);
        return currents(transformer, factor(supply), ohms, ohms);
    }

    /**
     * The secondary as what feeds the circuits behind it. The angle of its impedance is not known; its loop to earth is at most
     * the impedance of a line, for what lies ahead takes no zero-sequence current and the transformer's own zero-sequence impedance
     * is no higher than the other (delta to star; from memory).
     */
    static Mains secondary(CodeBasis basis, Mains mains, FaultTransformer transformer, FaultPoint terminals) {
        boolean three = transformer.feed() == Feed.THREE_PHASE;
        FaultCurrents lowest = terminals.minimum();
        Current least = Objects.requireNonNull(three ? lowest.threePhase() : lowest.lineToLine());
        double toNeutral = transformer.secondary().si() / (three ? SQRT_3 : 1);
        double volts = toNeutral
                * SupplyCases.of(basis, mains).lowest().lineToNeutral()
                / SupplyCases.lineToNeutral(mains).si();
        return new Mains(
                three ? SupplySystem.THREE_PHASE_THREE_WIRE : SupplySystem.ONE_PHASE_TWO_WIRE,
                transformer.secondary(),
                mains.lowTolerance(),
                mains.highTolerance(),
                mains.frequency(),
                terminals.maximum().largest(),
                least,
                null,
                transformer.earthing(),
                transformer.earthing() == SystemEarthing.IT ? null : new Resistance(volts / least.si()));
    }

    /** The voltage factor of a case. */
    private double factor(SupplyCase supply) {
        return supply.lineToNeutral() / SupplyCases.lineToNeutral(mains).si();
    }

    /** K_T = 0.95 c_max / (1 + 0.6 x_T) of IEC 60909-0 (from memory); none in North American practice. */
    private double correction(FaultTransformer transformer, double factor) {
        return basis == CodeBasis.NFPA_79 ? 1 : 0.95 * factor / (1 + 0.6 * transformer.impedance());
    }

    /** What lies ahead, seen from the secondary: one line of three, or the loop of a single phase. */
    private double ahead(FaultTransformer transformer, SupplyCase supply, Path panel) {
        double ratio = transformer.secondary().si() / mains.voltage().si();
        double line = supply.total(panel.line());
        double ohms;
        if (transformer.feed() == Feed.THREE_PHASE) {
            ohms = line;
        } else if (mains.system() == SupplySystem.ONE_PHASE_TWO_WIRE) {
            ohms = supply.total(panel.line().plus(panel.line())); // the neutral is as thick as the line
        } else {
            ohms = 2 * line;
        }
        return ohms * ratio * ratio;
    }

    /** u_k U² / S. */
    private static double own(FaultTransformer transformer) {
        double volts = transformer.secondary().si();
        return transformer.impedance() * volts * volts / transformer.power().si();
    }

    private static FaultCurrents currents(
            FaultTransformer transformer, double factor, double ohms, double ohmsToEarth) {
        boolean three = transformer.feed() == Feed.THREE_PHASE;
        double volts = factor * transformer.secondary().si();
        double toEarth = volts / (three ? SQRT_3 : 1);
        return new FaultCurrents(
                three ? new Current(volts / SQRT_3 / ohms) : null,
                new Current(volts / (three ? 2 * ohms : ohms)),
                null,
                transformer.earthing() == SystemEarthing.IT ? null : new Current(toEarth / ohmsToEarth));
    }

    static Derivation derivation(FaultTransformer transformer, FaultPoint point) {
        boolean three = transformer.feed() == Feed.THREE_PHASE;
        return new Derivation(
                point.id(),
                "I_k,max",
                (three ? "c U_2 / sqrt(3)" : "c U_2")
                        + " / hypot(Z_ahead (U_2 / U_1)^2, K_T u_k U_2^2 / S), to earth with 2/3 of Z_ahead where there are three phases",
                Derivation.inputs(
                        "u_k",
                        new Ratio(transformer.impedance()),
                        "U_2",
                        transformer.secondary(),
                        "S",
                        transformer.power()),
                SupplyCases.METHOD,
                point.maximum().largest());
    }
}
