package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;

/**
 * Faults at the secondary terminals of a transformer. Only the magnitude of its impedance is stated: the currents are
 * highest where it stands at right angles to that ahead of it, lowest where both have one angle.
 *
 * @param basis the code to follow
 * @param mains what feeds its primary
 */
record TransformerFaults(CodeBasis basis, Mains mains) {

    private static final double SQRT_3 = Math.sqrt(3);

    /** The currents where they are highest. */
    FaultCurrents highest(FaultTransformer transformer, SupplyCase supply, Path panel) {
        double own = own(transformer) * correction(transformer, factor(supply));
        return currents(transformer, factor(supply), Math.hypot(ahead(transformer, supply, panel), own));
    }

    /** The currents where they are lowest. */
    FaultCurrents lowest(FaultTransformer transformer, SupplyCase supply, Path panel) {
        return currents(transformer, factor(supply), ahead(transformer, supply, panel) + own(transformer));
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

    private static FaultCurrents currents(FaultTransformer transformer, double factor, double ohms) {
        double volts = factor * transformer.secondary().si();
        return transformer.feed() == Feed.THREE_PHASE
                ? new FaultCurrents(new Current(volts / SQRT_3 / ohms), new Current(volts / (2 * ohms)), null, null)
                : new FaultCurrents(null, new Current(volts / ohms), null, null);
    }

    static Derivation derivation(FaultTransformer transformer, FaultPoint point) {
        boolean three = transformer.feed() == Feed.THREE_PHASE;
        return new Derivation(
                point.id(),
                "I_k,max",
                (three ? "c U_2 / sqrt(3)" : "c U_2") + " / hypot(Z_ahead (U_2 / U_1)^2, K_T u_k U_2^2 / S)",
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
