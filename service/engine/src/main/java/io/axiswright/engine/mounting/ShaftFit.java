package io.axiswright.engine.mounting;

import io.axiswright.engine.design.InterferenceFastening;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Pressure;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;
import java.util.Optional;

/**
 * A press or shrink fit by Lamé: the pressure that closes the interference, and what it does.
 *
 * @param fit the fit
 * @param diameter diameter of the shaft
 */
record ShaftFit(InterferenceFastening fit, Length diameter) {

    /** T = μ · p · π · d² · L/2 at the smallest interference. */
    Capacity capacity() {
        Pressure pressure = pressure(fit.interference());
        return new Capacity(
                new Torque(torquePerLength() * fit.engagedLength().si()),
                FasteningMode.SLIP,
                "μ · p · π · d² · L / 2, p = δ / (d · [((D² + d²) / (D² − d²) + ν) / E_h + ((d² + d_i²) / (d² − d_i²) − ν) / E_s])",
                Derivation.inputs(
                        "μ",
                        new Ratio(fit.friction()),
                        "p",
                        pressure,
                        "d",
                        diameter,
                        "L",
                        fit.engagedLength(),
                        "δ",
                        fit.interference(),
                        "D",
                        fit.hubDiameter()),
                "Lamé's thick cylinders, handbook");
    }

    /** The length that carries a torque; none where the hub is no thicker than the shaft or the shaft all bore. */
    Optional<Length> lengthFor(Torque torque) {
        double perLength = torquePerLength();
        return perLength == 0 ? Optional.empty() : Optional.of(new Length(torque.si() / perLength));
    }

    /** Shear stress by Tresca's rule, doubled, at the bore of the hub, where it is greatest, at the largest interference. */
    Pressure hubStress() {
        Length largest = fit.largestInterference() == null ? fit.interference() : fit.largestInterference();
        // hoop stress p (D² + d²) / (D² − d²) and pressure −p at right angles to it
        return new Pressure(pressure(largest).si()
                * (widening(diameter.si(), fit.hubDiameter().si()) + 1));
    }

    private double torquePerLength() {
        double d = diameter.si();
        return fit.friction() * pressure(fit.interference()).si() * Math.PI * d * d / 2;
    }

    private Pressure pressure(Length interference) {
        double d = diameter.si();
        double bore = fit.shaftBore() == null ? 0 : fit.shaftBore().si();
        if (fit.hubDiameter().si() <= d || bore >= d) {
            return new Pressure(0);
        }
        double shaftModulus = fit.shaftModulus() == null
                ? fit.hubModulus().si()
                : fit.shaftModulus().si();
        double hub = (widening(d, fit.hubDiameter().si()) + MountingConstants.POISSON)
                / fit.hubModulus().si();
        double shaft = (widening(bore, d) - MountingConstants.POISSON) / shaftModulus;
        return new Pressure(interference.si() / (d * (hub + shaft)));
    }

    /** (D² + d²) / (D² − d²) of a ring. */
    private static double widening(double inner, double outer) {
        return (outer * outer + inner * inner) / (outer * outer - inner * inner);
    }
}
