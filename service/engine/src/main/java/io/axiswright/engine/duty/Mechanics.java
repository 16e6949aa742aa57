package io.axiswright.engine.duty;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.quantity.Angle;
import org.jspecify.annotations.Nullable;

/**
 * Any mechanism in one common form: a load behind a lossy transmission on a shaft with inertia. Metres and kilograms for
 * linear mechanisms, radians and kilogram square metres for rotary ones.
 *
 * @param rotary whether the load turns instead of travelling
 * @param travel how far the load goes per radian of the mechanism's shaft
 * @param mass mass or inertia of the load, without payloads
 * @param counterMass mass hanging on the other side
 * @param rise weight per mass against the positive direction, m/s²
 * @param rub Coulomb friction per mass, m/s²
 * @param drag Coulomb friction that does not depend on the mass
 * @param viscous friction per speed
 * @param shaftInertia inertia of the mechanism's shaft, kg·m²
 * @param efficiency efficiency between load and shaft
 */
record Mechanics(
        boolean rotary,
        double travel,
        double mass,
        double counterMass,
        double rise,
        double rub,
        double drag,
        double viscous,
        double shaftInertia,
        Efficiency efficiency) {

    /** Standard acceleration of free fall, m/s² (3rd CGPM, 1901). */
    static final double FREE_FALL = 9.80665;

    /** Density of steel, kg/m³: what a screw weighs. */
    private static final double STEEL = 7850;

    /** The one place that knows every mechanism. */
    static Mechanics of(Mechanism mechanism) {
        return switch (mechanism) {
            case Screw s ->
                linear(
                        s.lead().si() / (2 * Math.PI),
                        s.load().si(),
                        s.inclination(),
                        s.friction(),
                        solidCylinder(s.diameter().si(), s.length().si()),
                        Efficiency.of(s.efficiency(), s.backDrivingEfficiency()));
            case Belt b ->
                linear(
                        b.pulleyDiameter().si() / 2,
                        b.load().si(),
                        b.inclination(),
                        b.friction(),
                        b.pulleyInertia().si(),
                        Efficiency.of(b.efficiency(), b.backDrivingEfficiency()));
            case RackAndPinion r ->
                linear(
                        r.pitchDiameter().si() / 2,
                        r.load().si(),
                        r.inclination(),
                        r.friction(),
                        r.pinionInertia().si(),
                        Efficiency.of(r.efficiency(), r.backDrivingEfficiency()));
            case RotaryTable t ->
                new Mechanics(
                        true,
                        1,
                        t.inertia().si(),
                        0,
                        0,
                        0,
                        t.bearingFriction().si(),
                        0,
                        0,
                        Efficiency.of(t.efficiency(), t.backDrivingEfficiency()));
            case Hoist h ->
                new Mechanics(
                        false,
                        h.drumDiameter().si() / 2 / h.reeving(),
                        h.load().si(),
                        h.counterweight() == null ? 0 : h.counterweight().si(),
                        FREE_FALL,
                        0,
                        0,
                        0,
                        h.drumInertia().si(),
                        Efficiency.of(h.efficiency(), h.backDrivingEfficiency()));
        };
    }

    /** The load in one segment: masses of both sides add as inertia, their weights subtract. */
    LoadEffort effort(double payload, double process) {
        double hanging = mass + payload;
        return new LoadEffort(
                hanging + counterMass, (hanging - counterMass) * rise, hanging * rub + drag, viscous, process);
    }

    private static Mechanics linear(
            double travel,
            double mass,
            Angle inclination,
            @Nullable Friction friction,
            double shaftInertia,
            Efficiency efficiency) {
        double slope = inclination.si();
        return new Mechanics(
                false,
                travel,
                mass,
                0,
                FREE_FALL * Math.sin(slope),
                friction == null ? 0 : friction.coefficient() * FREE_FALL * Math.cos(slope),
                friction == null || friction.drag() == null
                        ? 0
                        : friction.drag().si(),
                friction == null || friction.viscous() == null
                        ? 0
                        : friction.viscous().si(),
                shaftInertia,
                efficiency);
    }

    /** J = pi·rho·L·d⁴/32. */
    private static double solidCylinder(double diameter, double length) {
        return Math.PI * STEEL * length * Math.pow(diameter, 4) / 32;
    }
}
