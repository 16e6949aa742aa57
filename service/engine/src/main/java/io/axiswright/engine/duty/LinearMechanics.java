package io.axiswright.engine.duty;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.HoistRope;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Roller;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Quantity;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Mechanisms that move their load in a line, evenly with their shaft. */
final class LinearMechanics {

    /** Density of steel, kg/m³: what a screw weighs. */
    private static final double STEEL = 7850;

    private LinearMechanics() {}

    static Mechanics of(Screw screw) {
        Efficiency efficiency = screw.thread() != null
                ? Efficiency.of(screw.thread(), screw.lead().si())
                : Efficiency.of(Objects.requireNonNull(screw.efficiency()), screw.backDrivingEfficiency());
        return new Mechanics(
                false,
                0,
                solidCylinder(screw.diameter().si(), screw.length().si()),
                si(screw.preloadTorque()) + si(screw.bearingFriction()),
                efficiency,
                sliding(travel(screw), screw.load().si(), 0, screw.inclination(), screw.friction()));
    }

    /** How far a screw moves its nut per radian. */
    static double travel(Screw screw) {
        return screw.lead().si() / (2 * Math.PI);
    }

    static Mechanics of(Belt belt) {
        double radius = belt.pulleyDiameter().si() / 2;
        return new Mechanics(
                false,
                0,
                belt.pulleyInertia().si()
                        + rolling(belt.secondPulley(), radius)
                        + si(belt.beltMass()) * radius * radius,
                0,
                Efficiency.of(belt.efficiency(), belt.backDrivingEfficiency()),
                sliding(radius, belt.load().si(), 0, belt.inclination(), belt.friction()));
    }

    static Mechanics of(RackAndPinion rack) {
        return new Mechanics(
                false,
                0,
                rack.pinionInertia().si(),
                0,
                Efficiency.of(rack.efficiency(), rack.backDrivingEfficiency()),
                sliding(rack.pitchDiameter().si() / 2, rack.load().si(), 0, rack.inclination(), rack.friction()));
    }

    static Mechanics of(Conveyor conveyor) {
        double radius = conveyor.drumDiameter().si() / 2;
        return new Mechanics(
                true,
                0,
                conveyor.drumInertia().si()
                        + rolling(conveyor.tailDrum(), radius)
                        + conveyor.idlers() * rolling(conveyor.idler(), radius),
                0,
                Efficiency.of(conveyor.efficiency(), conveyor.backDrivingEfficiency()),
                sliding(
                        radius,
                        conveyor.load().si(),
                        conveyor.beltMass().si(),
                        conveyor.inclination(),
                        conveyor.friction()));
    }

    static Mechanics of(Hoist hoist) {
        HoistRope rope = hoist.rope();
        double counter = si(hoist.counterweight());
        double perMetre = rope == null ? 0 : rope.mass().si() / rope.height().si();
        double ropes = rope == null ? 0 : rope.mass().si() * (rope.compensated() ? 2 : 1);
        boolean balanced = rope != null && rope.compensated();
        // at the lowest place all rope hangs on the load's side; every metre up takes one away, and gives one to the
        // counterweight
        double hanging = rope == null || balanced ? 0 : rope.mass().si();
        double rise = balanced ? 0 : -perMetre * (hoist.counterweight() == null ? 1 : 2) * Mechanics.FREE_FALL;
        double travel = hoist.drumDiameter().si() / 2 / hoist.reeving();
        return new Mechanics(
                false,
                rope == null ? 0 : rope.start().si(),
                hoist.drumInertia().si(),
                0,
                Efficiency.of(hoist.efficiency(), hoist.backDrivingEfficiency()),
                (payload, process) -> new EvenEffort(
                        travel,
                        hoist.load().si() + payload + counter + ropes,
                        (hoist.load().si() + payload - counter + hanging) * Mechanics.FREE_FALL,
                        rise,
                        si(hoist.bearingFriction()) / travel,
                        si(hoist.viscousFriction()) / travel / travel,
                        process));
    }

    /**
     * A load on guides.
     *
     * @param endless mass of an endless belt that moves and rubs with the load but weighs nothing on a slope
     */
    private static Mechanics.Loading sliding(
            double travel, double mass, double endless, Angle inclination, @Nullable Friction friction) {
        double along = Mechanics.FREE_FALL * Math.sin(inclination.si());
        double across = friction == null ? 0 : rub(friction, inclination);
        double drag = friction == null ? 0 : si(friction.drag());
        double viscous = friction == null ? 0 : si(friction.viscous());
        return (payload, process) -> {
            double carried = mass + payload;
            return new EvenEffort(
                    travel,
                    carried + endless,
                    carried * along,
                    0,
                    (carried + endless) * across + drag,
                    viscous,
                    process);
        };
    }

    /** Friction per mass under its own weight, m/s². */
    static double rub(Friction friction, Angle inclination) {
        return friction.coefficient() * Mechanics.FREE_FALL * Math.cos(inclination.si());
    }

    private static double rolling(@Nullable Roller roller, double radius) {
        if (roller == null) {
            return 0;
        }
        double ratio = 2 * radius / roller.diameter().si();
        return roller.inertia().si() * ratio * ratio;
    }

    /** J = pi·rho·L·d⁴/32. */
    private static double solidCylinder(double diameter, double length) {
        return Math.PI * STEEL * length * Math.pow(diameter, 4) / 32;
    }

    static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
