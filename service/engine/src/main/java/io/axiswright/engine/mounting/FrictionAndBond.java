package io.axiswright.engine.mounting;

import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Torque;

/** Fastenings that act on the bare shaft: clamp hubs and bonded joints. */
final class FrictionAndBond {

    private FrictionAndBond() {}

    /**
     * T = μ · n · F · d: contact along two lines, as in a bore with clearance. Uniform pressure would give π/2 of it; the lower
     * is taken because the bore's fit is not known.
     */
    static Capacity clamp(ClampFastening clamp, Length diameter) {
        double preload = clamp.screws() * clamp.screwPreload().si();
        return new Capacity(
                new Torque(clamp.friction() * preload * diameter.si()),
                FasteningMode.SLIP,
                "μ · n · F · d",
                Derivation.inputs(
                        "μ",
                        new Ratio(clamp.friction()),
                        "n",
                        new Ratio(clamp.screws()),
                        "F",
                        clamp.screwPreload(),
                        "d",
                        diameter),
                "derived: contact along two lines; uniform pressure would give π/2 of it");
    }

    /** T = τ · f · π · d² · L/2. */
    static Capacity bond(BondedFastening bond, Length diameter) {
        double perLength = bondPerLength(bond, diameter);
        return new Capacity(
                new Torque(perLength * bond.engagedLength().si()),
                FasteningMode.BOND,
                "τ · f · π · d² · L / 2",
                Derivation.inputs(
                        "τ",
                        bond.shearStrength(),
                        "f",
                        new Ratio(bond.reduction()),
                        "d",
                        diameter,
                        "L",
                        bond.engagedLength()),
                "derived: shear strength on the cylinder, at the radius; strength by ISO 10123");
    }

    static Length bondLengthFor(Torque torque, BondedFastening bond, Length diameter) {
        return new Length(torque.si() / bondPerLength(bond, diameter));
    }

    static Force preloadFor(Torque torque, double friction, Length diameter) {
        return new Force(torque.si() / (friction * diameter.si()));
    }

    private static double bondPerLength(BondedFastening bond, Length diameter) {
        return bond.shearStrength().si() * bond.reduction() * Math.PI * diameter.si() * diameter.si() / 2;
    }
}
