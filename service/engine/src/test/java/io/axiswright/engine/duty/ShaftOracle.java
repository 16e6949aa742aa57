package io.axiswright.engine.duty;

import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomInstant;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.HoistRope;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Roller;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Unbalance;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.quantity.Quantity;
import java.util.List;
import org.hipparchus.analysis.differentiation.UnivariateDerivative1;
import org.hipparchus.analysis.differentiation.UnivariateDerivative2;
import org.jspecify.annotations.Nullable;

/**
 * What mechanisms ask of their shaft, by virtual work and the change of angular momentum: positions and energies are written
 * down, their derivatives come from automatic differentiation.
 */
final class ShaftOracle {

    private static final double G = 9.80665;

    private ShaftOracle() {}

    /** What the load asks of the shaft and how the shaft moves; powers in W. */
    record Shaft(
            double torque,
            double speed,
            double acceleration,
            double inertia,
            double drag,
            double friction,
            double process,
            double lifting) {}

    static boolean knows(Mechanism mechanism) {
        return mechanism instanceof Crank
                || mechanism instanceof Winder
                || (mechanism instanceof Custom custom && custom.points() != null)
                || mechanism instanceof Conveyor
                || mechanism instanceof DirectDrive
                || (mechanism instanceof Hoist hoist && hoist.rope() != null)
                || (mechanism instanceof RotaryTable table && table.unbalance() != null);
    }

    static double start(Mechanism mechanism) {
        return switch (mechanism) {
            case Crank crank -> crank.startAngle().si();
            case Custom custom -> custom.start();
            case Hoist hoist when hoist.rope() != null -> hoist.rope().start().si();
            case RotaryTable table
            when table.unbalance() != null -> table.unbalance().startAngle().si();
            case DirectDrive drive
            when drive.unbalance() != null -> drive.unbalance().startAngle().si();
            default -> 0;
        };
    }

    static Shaft at(Mechanism mechanism, double q, double v, double a, double payload, double process, double way) {
        return switch (mechanism) {
            case Crank crank -> crank(crank, q, v, a, payload, process);
            case Winder winder -> winder(winder, q, v, a, process);
            case Custom custom -> custom(custom, q, v, a, payload, process, way);
            case Hoist hoist -> hoist(hoist, q, v, a, payload, process, way);
            case Conveyor conveyor -> conveyor(conveyor, v, a, payload, process, way);
            case RotaryTable table ->
                turning(
                        table.inertia().si(),
                        si(table.bearingFriction()),
                        si(table.viscousFriction()),
                        table.unbalance(),
                        q,
                        v,
                        a,
                        payload,
                        process,
                        way);
            case DirectDrive drive ->
                turning(
                        drive.inertia().si(),
                        si(drive.bearingFriction()),
                        si(drive.viscousFriction()),
                        drive.unbalance(),
                        q,
                        v,
                        a,
                        payload,
                        process,
                        way);
            default -> throw new IllegalArgumentException("unknown to the oracle: " + mechanism);
        };
    }

    private static Shaft crank(Crank crank, double q, double w, double a, double payload, double process) {
        UnivariateDerivative2 angle = new UnivariateDerivative2(q, 1, 0);
        double r = crank.radius().si();
        UnivariateDerivative2 x;
        if (crank.rodLength() == null) {
            x = angle.cos().negate().add(1).multiply(r);
        } else {
            double rod = crank.rodLength().si();
            UnivariateDerivative2 reach = angle.sin()
                    .multiply(r)
                    .subtract(si(crank.offset()))
                    .square()
                    .negate()
                    .add(rod * rod)
                    .sqrt();
            x = angle.cos().multiply(r).add(reach).negate().add(r + rod);
        }
        double lever = x.getFirstDerivative();
        double speed = lever * w;
        double rodMass = si(crank.rodMass());
        double centre = crank.rodCentre() == null ? 0.5 : crank.rodCentre();
        double mass = crank.load().si() + rodMass * centre + payload;
        double slope = crank.inclination().si();
        double weight = mass * G * Math.sin(slope);
        double rubbing = rubbing(crank.friction(), mass, slope, speed);
        double force = mass * (lever * a + x.getSecondDerivative() * w * w) + weight + rubbing + process;
        return new Shaft(
                force * lever,
                w,
                a,
                crank.crankInertia().si() + rodMass * (1 - centre) * r * r,
                0,
                rubbing * speed,
                process * speed,
                weight * speed);
    }

    private static Shaft winder(Winder winder, double q, double v, double a, double process) {
        UnivariateDerivative1 place = new UnivariateDerivative1(q, v);
        UnivariateDerivative1 stated = new UnivariateDerivative1(v, a);
        double start = winder.startDiameter().si() / 2;
        double core = winder.coreDiameter().si() / 2;
        double full = winder.fullDiameter().si() / 2;
        double h = winder.thickness().si();
        boolean line = winder.motion() == WinderMotion.LINE;
        UnivariateDerivative1 radius = line
                ? place.multiply(h / Math.PI).add(start * start).sqrt()
                : place.multiply(h / 2 / Math.PI).add(start);
        UnivariateDerivative1 w = line ? stated.divide(radius) : stated;
        UnivariateDerivative1 material =
                radius.square().subtract(core * core).multiply(winder.material().si() / (full * full - core * core));
        // a hollow cylinder: m·(R² + r²)/2
        UnivariateDerivative1 inertia =
                material.multiply(radius.square().add(core * core)).divide(2);
        double lineSpeed = w.getValue() * radius.getValue();
        double arriving = material.getFirstDerivative();
        double pull = winder.tension().si() + process;
        double torque = pull * radius.getValue()
                + inertia.multiply(w).getFirstDerivative()
                - arriving * lineSpeed * radius.getValue()
                + si(winder.viscousFriction()) * w.getValue();
        return new Shaft(
                torque,
                w.getValue(),
                w.getFirstDerivative(),
                winder.coreInertia().si(),
                si(winder.bearingFriction()),
                si(winder.viscousFriction()) * w.getValue() * w.getValue(),
                pull * lineSpeed - arriving * lineSpeed * lineSpeed / 2,
                0);
    }

    /** The number of the stretch between corners a position is on. */
    static int stretch(Mechanism mechanism, double q) {
        return switch (mechanism) {
            case Crank crank -> {
                double rod = crank.rodLength() == null
                        ? Double.POSITIVE_INFINITY
                        : crank.rodLength().si();
                double r = crank.radius().si();
                double e = si(crank.offset());
                double turn = 2 * Math.PI;
                yield (int) (Math.floor((q - Math.asin(e / (rod + r))) / turn)
                        + Math.floor((q - Math.PI - Math.asin(e / (rod - r))) / turn));
            }
            case Custom custom -> {
                double first = points(custom).getFirst().angle().si();
                double period = points(custom).getLast().angle().si() - first;
                int turn = custom.turns() ? (int) Math.floor((q - first) / period) : 0;
                yield points(custom).size() * turn + interval(custom, q - turn * period);
            }
            default -> 0;
        };
    }

    private static List<CustomPoint> points(Custom custom) {
        return java.util.Objects.requireNonNull(custom.points());
    }

    private static int interval(Custom custom, double inside) {
        int k = 0;
        while (k < points(custom).size() - 2
                && points(custom).get(k + 1).angle().si() <= inside) {
            k++;
        }
        return k;
    }

    private static Shaft custom(
            Custom custom, double q, double w, double a, double payload, double process, double way) {
        List<CustomPoint> points = points(custom);
        double first = points.getFirst().angle().si();
        double period = points.getLast().angle().si() - first;
        double inside = custom.turns() ? q - Math.floor((q - first) / period) * period : q;
        int k = interval(custom, inside);
        CustomPoint left = points.get(k);
        CustomPoint right = points.get(k + 1);
        double u = (inside - left.angle().si())
                / (right.angle().si() - left.angle().si());
        double inertia = (1 - u) * left.inertia().si() + u * right.inertia().si();
        double rise = (right.inertia().si() - left.inertia().si())
                / (right.angle().si() - left.angle().si());
        double torque = (1 - u) * left.torque().si() + u * right.torque().si();
        double rubbing = way * si(custom.friction()) + si(custom.viscousFriction()) * w;
        return new Shaft(
                (inertia + payload) * a + rise * w * w / 2 + torque + rubbing + process,
                w,
                a,
                0,
                0,
                rubbing * w,
                process * w,
                torque * w);
    }

    /**
     * Torque and inertia over time: angular momentum, and of the power w²·dJ/dt the half that does not stay as kinetic energy, which
     * an actuator takes.
     */
    static Shaft timed(Custom custom, double time, double w, double a, double payload, double process, double way) {
        List<CustomInstant> instants = java.util.Objects.requireNonNull(custom.instants());
        int k = 0;
        while (k < instants.size() - 2 && instants.get(k + 1).time().si() <= time) {
            k++;
        }
        double from = instants.get(k).time().si();
        double to = instants.get(k + 1).time().si();
        double u = (time - from) / (to - from);
        double share = Math.clamp(u, 0, 1);
        double one = instants.get(k).inertia().si();
        double two = instants.get(k + 1).inertia().si();
        double inertia = (1 - share) * one + share * two;
        double rise = u < 0 || u > 1 ? 0 : (two - one) / (to - from);
        double torque = (1 - share) * instants.get(k).torque().si()
                + share * instants.get(k + 1).torque().si();
        double rubbing = way * si(custom.friction()) + si(custom.viscousFriction()) * w;
        return new Shaft(
                (inertia + payload) * a + rise * w + torque + rubbing + process,
                w,
                a,
                0,
                0,
                rubbing * w,
                process * w + rise * w * w / 2,
                torque * w);
    }

    private static Shaft hoist(Hoist hoist, double y, double v, double a, double payload, double process, double way) {
        HoistRope rope = java.util.Objects.requireNonNull(hoist.rope());
        double lever = hoist.drumDiameter().si() / 2;
        double top = rope.height().si();
        double perMetre = rope.mass().si() / top;
        double moved = hoist.load().si()
                + payload
                + si(hoist.counterweight())
                + rope.mass().si() * (rope.compensated() ? 2 : 1);
        UnivariateDerivative1 height = new UnivariateDerivative1(y, 1);
        UnivariateDerivative1 drop = height.negate().add(top);
        // potential energy: each hanging rope at half its height, the rope on the drum at the top
        UnivariateDerivative1 energy = height.multiply(hoist.load().si() + payload)
                .add(drop.multiply(height.add(top)).multiply(perMetre / 2));
        if (hoist.counterweight() == null) {
            energy = energy.add(height.multiply(top * perMetre));
        } else {
            energy = energy.add(drop.multiply(si(hoist.counterweight())))
                    .add(height.multiply(drop.add(top)).multiply(perMetre / 2));
        }
        if (rope.compensated()) {
            energy = energy.add(height.square().add(drop.square()).multiply(perMetre / 2));
        }
        double weight = energy.getFirstDerivative() * G;
        double rubbing = way * si(hoist.bearingFriction()) + si(hoist.viscousFriction()) * v / lever;
        return new Shaft(
                (moved * a + weight + process) * lever + rubbing,
                v / lever,
                a / lever,
                hoist.drumInertia().si(),
                0,
                rubbing * v / lever,
                process * v,
                weight * v);
    }

    private static Shaft conveyor(Conveyor conveyor, double v, double a, double payload, double process, double way) {
        double lever = conveyor.drumDiameter().si() / 2;
        double goods = conveyor.load().si() + payload;
        double moved = goods + conveyor.beltMass().si();
        double slope = conveyor.inclination().si();
        double weight = goods * G * Math.sin(slope);
        double rubbing = rubbing(conveyor.friction(), moved, slope, v);
        double rollers = conveyor.drumInertia().si()
                + rolling(conveyor.tailDrum(), lever)
                + conveyor.idlers() * rolling(conveyor.idler(), lever);
        return new Shaft(
                (moved * a + weight + rubbing + process) * lever,
                v / lever,
                a / lever,
                rollers,
                0,
                rubbing * v,
                process * v,
                weight * v);
    }

    private static Shaft turning(
            double inertia,
            double friction,
            double viscous,
            @Nullable Unbalance unbalance,
            double q,
            double w,
            double a,
            double payload,
            double process,
            double way) {
        double lifting = 0;
        if (unbalance != null) {
            UnivariateDerivative1 height = new UnivariateDerivative1(q, 1)
                    .sin()
                    .multiply(unbalance.eccentricity().si()
                            * Math.sin(unbalance.tilt().si()));
            lifting = unbalance.mass().si() * G * height.getFirstDerivative();
        }
        return new Shaft(
                (inertia + payload) * a + lifting + way * friction + viscous * w + process,
                w,
                a,
                0,
                0,
                friction * Math.abs(w) + viscous * w * w,
                process * w,
                lifting * w);
    }

    private static double rubbing(@Nullable Friction friction, double mass, double slope, double speed) {
        return friction == null
                ? 0
                : Math.signum(speed) * (friction.coefficient() * mass * G * Math.cos(slope) + si(friction.drag()))
                        + si(friction.viscous()) * speed;
    }

    private static double rolling(@Nullable Roller roller, double radius) {
        double turns = roller == null ? 0 : radius / (roller.diameter().si() / 2);
        return roller == null ? 0 : roller.inertia().si() * turns * turns;
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
