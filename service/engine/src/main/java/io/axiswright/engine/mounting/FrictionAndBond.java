package io.axiswright.engine.mounting;

import io.axiswright.engine.design.BondedFastening;
import io.axiswright.engine.design.BushingFastening;
import io.axiswright.engine.design.ClampFastening;
import io.axiswright.engine.design.SetScrewFastening;
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

    /** T = F · d / 2: the axial holding force acts at the surface of the shaft. */
    static Capacity setScrews(SetScrewFastening screws, Length diameter) {
        return new Capacity(
                new Torque(screws.holdingForce().si() * diameter.si() / 2),
                FasteningMode.SLIP,
                "F_h · d / 2",
                Derivation.inputs("F_h", screws.holdingForce(), "d", diameter),
                "Shigley's Mechanical Engineering Design 9th ed. p. 389");
    }

    /** Each cone presses with N = n · F / tan(α + ρ), tan ρ = μ, all round on the shaft: T = μ · N · d / 2. */
    static Capacity bushing(BushingFastening bushing, Length diameter) {
        double preload = bushing.screws() * bushing.screwPreload().si();
        return new Capacity(
                new Torque(preload * bushingPerPreload(bushing, diameter)),
                FasteningMode.SLIP,
                "μ · n · F · d / (2 tan(α + arctan μ))",
                Derivation.inputs(
                        "μ",
                        new Ratio(bushing.friction()),
                        "n",
                        new Ratio(bushing.screws()),
                        "F",
                        bushing.screwPreload(),
                        "d",
                        diameter,
                        "α",
                        bushing.coneAngle()),
                "derived: equilibrium of a cone that slides under friction; uniform pressure on the shaft");
    }

    static Force bushingPreloadFor(Torque torque, BushingFastening bushing, Length diameter) {
        return new Force(torque.si() / bushingPerPreload(bushing, diameter));
    }

    private static double bushingPerPreload(BushingFastening bushing, Length diameter) {
        double friction = bushing.friction();
        return friction * diameter.si() / (2 * Math.tan(bushing.coneAngle().si() + Math.atan(friction)));
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
