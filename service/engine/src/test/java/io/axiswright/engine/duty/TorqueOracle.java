package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.jspecify.annotations.Nullable;

/**
 * A second route to the torque of an axis: instant by instant, with no polynomial and no class of the engine's
 * calculation, and sums by adaptive Gauss quadrature.
 */
final class TorqueOracle {

    private static final double G = 9.80665;
    private static final double EDGE = 1e-6;
    private static final GaussIntegrator COARSE = new GaussIntegratorFactory().legendre(10);

    private final Axis axis;
    private final double inertia;

    /** What holds at one instant; powers in W. */
    record State(
            double speed,
            double torque,
            double friction,
            double process,
            double lifting,
            double loss,
            double[] switches) {}

    TorqueOracle(Axis axis, double inertia) {
        this.axis = axis;
        this.inertia = inertia;
    }

    /** Integral over the cycle of anything that depends on the state. */
    double integral(ToDoubleFunction<State> integrand) {
        double rough = 0;
        for (int k = 0; k < 200; k++) {
            rough += Math.abs(integrand.applyAsDouble(at(period() * (k + 0.5) / 200))) * period() / 200;
        }
        double sum = 0;
        for (Segment segment : axis.cycle().segments()) {
            List<Double> cuts = withKinks(segment, cuts(segment));
            for (int k = 1; k < cuts.size(); k++) {
                double from = cuts.get(k - 1);
                double to = cuts.get(k);
                double whole = gauss(segment, integrand, from, to);
                sum += adaptive(segment, integrand, from, to, whole, 1e-12 * rough, 40);
            }
        }
        return sum;
    }

    double period() {
        return axis.cycle().segments().stream()
                .mapToDouble(s -> s.duration().si())
                .sum();
    }

    State at(double instant) {
        double left = instant;
        for (Segment segment : axis.cycle().segments()) {
            if (left < segment.duration().si()) {
                return state(segment, left);
            }
            left -= segment.duration().si();
        }
        throw new IllegalArgumentException("after the end of the cycle");
    }

    /** Halves an interval until both halves agree with the whole; only around a kink it goes deep. */
    private double adaptive(
            Segment segment,
            ToDoubleFunction<State> integrand,
            double from,
            double to,
            double whole,
            double tolerance,
            int depth) {
        double middle = (from + to) / 2;
        double left = gauss(segment, integrand, from, middle);
        double right = gauss(segment, integrand, middle, to);
        if (depth == 0 || Math.abs(left + right - whole) <= tolerance) {
            return left + right;
        }
        return adaptive(segment, integrand, from, middle, left, tolerance, depth - 1)
                + adaptive(segment, integrand, middle, to, right, tolerance, depth - 1);
    }

    private double gauss(Segment segment, ToDoubleFunction<State> integrand, double from, double to) {
        double half = (to - from) / 2;
        return half * COARSE.integrate(x -> integrand.applyAsDouble(state(segment, from + half * (x + 1))));
    }

    /** Adds the instants at which a power changes sign, where the integrand has a kink: sampled, then bisected. */
    private List<Double> withKinks(Segment segment, List<Double> cuts) {
        List<Double> all = new ArrayList<>(cuts);
        int steps = 60;
        for (int k = 1; k < cuts.size(); k++) {
            double from = cuts.get(k - 1);
            double step = (cuts.get(k) - from) / steps;
            double[] grid = new double[steps + 1];
            for (int j = 0; j <= steps; j++) {
                grid[j] = from + step * Math.max(EDGE, Math.min(steps - EDGE, j));
            }
            for (int j = 0; j < steps; j++) {
                for (int which = 0; which < 2 + axis.gears().size(); which++) {
                    kink(segment, which, grid[j], grid[j + 1], all);
                }
            }
        }
        all.sort(null);
        return all;
    }

    private void kink(Segment segment, int which, double from, double to, List<Double> all) {
        double left = from;
        double right = to;
        double sign = state(segment, left).switches()[which];
        if (sign * state(segment, right).switches()[which] >= 0) {
            return;
        }
        for (int k = 0; k < 60; k++) {
            double middle = (left + right) / 2;
            if (state(segment, middle).switches()[which] * sign > 0) {
                left = middle;
            } else {
                right = middle;
            }
        }
        all.add((left + right) / 2);
    }

    private static List<Double> cuts(Segment segment) {
        double end = segment.duration().si();
        List<Double> cuts = new ArrayList<>(List.of(0.0, end));
        if (segment instanceof Move move) {
            switch (move.law()) {
                case Trapezoidal t -> {
                    cuts.add(t.accelerationShare() * end);
                    cuts.add((1 - t.decelerationShare()) * end);
                }
                case SCurve s -> {
                    double b = s.accelerationShare();
                    double r = b * s.jerkShare() / 2;
                    for (double u : new double[] {r, b - r, b}) {
                        cuts.add(u * end);
                        cuts.add((1 - u) * end);
                    }
                }
                case Triangular t -> cuts.add(end / 2);
                case Polynomial345 p -> cuts.add(end / 2);
            }
        }
        cuts.sort(null);
        return cuts;
    }

    private State state(Segment segment, double instant) {
        return switch (segment) {
            case Move move -> state(move, move.payload(), move.processEffort(), instant);
            case Dwell dwell -> {
                boolean held = dwell.brakeHolds() && axis.drive().holdingBrake();
                yield held
                        ? new State(0, 0, 0, 0, 0, 0, new double[10])
                        : new State(0, holding(dwell.payload(), dwell.processEffort()), 0, 0, 0, 0, new double[10]);
            }
        };
    }

    private double ratio() {
        return axis.gears().stream().mapToDouble(Gear::ratio).reduce(1, (a, b) -> a * b);
    }

    private boolean selfLocking() {
        return back(efficiency(), backDriving()) <= 0
                || axis.gears().stream().anyMatch(g -> back(g.efficiency(), g.backDrivingEfficiency()) <= 0);
    }

    private static double back(double driving, @Nullable Double back) {
        return back != null ? back : 2 - 1 / driving;
    }

    private double holding(@Nullable Quantity payload, @Nullable Quantity process) {
        return selfLocking() ? 0 : (weight(si(payload)) + si(process)) * lever() / ratio();
    }

    private State state(Move move, @Nullable Quantity payload, @Nullable Quantity process, double instant) {
        double distance = move.distance().si();
        double time = move.duration().si();
        double u = instant / time;
        double v = distance / time * speed(move.law(), u);
        double a = distance / time / time * acceleration(move.law(), u);
        double direction = Math.signum(distance);
        Friction friction = friction();
        double coulomb = axis.mechanism() instanceof RotaryTable table
                ? table.bearingFriction().si()
                : friction == null
                        ? 0
                        : friction.coefficient() * G * Math.cos(slope()) * (mass() + si(payload)) + si(friction.drag());
        double viscous = friction == null ? 0 : si(friction.viscous());
        double moved = mass() + si(payload) + (axis.mechanism() instanceof Hoist hoist ? si(hoist.counterweight()) : 0);
        double resisting = direction * coulomb + viscous * v;
        double effort = moved * a + weight(si(payload)) + si(process) + resisting;
        double shaftSpeed = v / lever();
        double before = effort * lever();
        double after = throughElement(before, direction, efficiency(), backDriving());
        double drag =
                axis.mechanism() instanceof Screw screw ? si(screw.preloadTorque()) + si(screw.bearingFriction()) : 0;
        double shaft = after + shaftInertia() * a / lever() + direction * drag;
        double loss = (after - before) * shaftSpeed + drag * Math.abs(shaftSpeed);
        double[] switches = new double[10];
        switches[0] = before;
        double turns = 1;
        int which = 1;
        for (Gear gear : axis.gears().reversed()) {
            switches[which++] = shaft;
            double input = throughElement(shaft, direction, gear.efficiency(), gear.backDrivingEfficiency());
            loss += (input - shaft) * shaftSpeed * turns;
            turns *= gear.ratio();
            loss += si(gear.noLoadTorque()) * Math.abs(shaftSpeed) * turns;
            boolean first = gear == axis.gears().getFirst();
            shaft = input / gear.ratio()
                    + direction * si(gear.noLoadTorque())
                    + (first ? 0 : gear.inertia().si() * a / lever() * turns);
        }
        double torque = shaft + inertia * a / lever() * turns;
        switches[which] = torque;
        return new State(
                shaftSpeed * ratio(), torque, resisting * v, si(process) * v, weight(si(payload)) * v, loss, switches);
    }

    private static double throughElement(double torque, double direction, double driving, @Nullable Double back) {
        return torque * direction > 0 ? torque / driving : torque * back(driving, back);
    }

    private double lever() {
        return switch (axis.mechanism()) {
            case Screw s -> s.lead().si() / 2 / Math.PI;
            case Belt b -> b.pulleyDiameter().si() / 2;
            case RackAndPinion r -> r.pitchDiameter().si() / 2;
            case RotaryTable t -> 1;
            case Hoist h -> h.drumDiameter().si() / 2 / h.reeving();
            default -> throw unknown();
        };
    }

    private double mass() {
        return switch (axis.mechanism()) {
            case Screw s -> s.load().si();
            case Belt b -> b.load().si();
            case RackAndPinion r -> r.load().si();
            case RotaryTable t -> t.inertia().si();
            case Hoist h -> h.load().si();
            default -> throw unknown();
        };
    }

    private double slope() {
        return switch (axis.mechanism()) {
            case Screw s -> s.inclination().si();
            case Belt b -> b.inclination().si();
            case RackAndPinion r -> r.inclination().si();
            case RotaryTable t -> 0;
            case Hoist h -> Math.PI / 2;
            default -> throw unknown();
        };
    }

    private double weight(double payload) {
        Mechanism mechanism = axis.mechanism();
        if (mechanism instanceof Hoist hoist) {
            return (mass() + payload - si(hoist.counterweight())) * G;
        }
        return mechanism instanceof RotaryTable ? 0 : (mass() + payload) * G * Math.sin(slope());
    }

    private double shaftInertia() {
        return switch (axis.mechanism()) {
            case Screw s ->
                Math.PI * 7850 * s.length().si() * Math.pow(s.diameter().si(), 4) / 32;
            case Belt b -> b.pulleyInertia().si();
            case RackAndPinion r -> r.pinionInertia().si();
            case RotaryTable t -> 0;
            case Hoist h -> h.drumInertia().si();
            default -> throw unknown();
        };
    }

    private double efficiency() {
        return switch (axis.mechanism()) {
            case Screw s -> java.util.Objects.requireNonNull(s.efficiency());
            case Belt b -> b.efficiency();
            case RackAndPinion r -> r.efficiency();
            case RotaryTable t -> t.efficiency();
            case Hoist h -> h.efficiency();
            default -> throw unknown();
        };
    }

    private @Nullable Double backDriving() {
        return switch (axis.mechanism()) {
            case Screw s -> s.backDrivingEfficiency();
            case Belt b -> b.backDrivingEfficiency();
            case RackAndPinion r -> r.backDrivingEfficiency();
            case RotaryTable t -> t.backDrivingEfficiency();
            case Hoist h -> h.backDrivingEfficiency();
            default -> throw unknown();
        };
    }

    private @Nullable Friction friction() {
        return switch (axis.mechanism()) {
            case Screw s -> s.friction();
            case Belt b -> b.friction();
            case RackAndPinion r -> r.friction();
            case RotaryTable t -> null;
            case Hoist h -> null;
            default -> throw unknown();
        };
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private static double acceleration(MotionLaw law, double u) {
        return switch (law) {
            case Triangular t -> u < 0.5 ? 4 : -4;
            case Polynomial345 p -> 60 * u * (1 - u) * (1 - 2 * u);
            case Trapezoidal t -> {
                double top = 2 / (2 - t.accelerationShare() - t.decelerationShare());
                yield u < t.accelerationShare()
                        ? top / t.accelerationShare()
                        : u > 1 - t.decelerationShare() ? -top / t.decelerationShare() : 0;
            }
            case SCurve s -> {
                double b = s.accelerationShare();
                double r = b * s.jerkShare() / 2;
                double highest = 1 / (1 - b) / (b - r);
                double x = Math.min(u, 1 - u);
                double size = highest * Math.max(0, Math.min(1, Math.min(x / r, (b - x) / r)));
                yield u < 0.5 ? size : -size;
            }
        };
    }

    private static double speed(MotionLaw law, double u) {
        return switch (law) {
            case Triangular t -> 4 * Math.min(u, 1 - u);
            case Polynomial345 p -> 30 * u * u * (1 - u) * (1 - u);
            case Trapezoidal t -> {
                double top = 2 / (2 - t.accelerationShare() - t.decelerationShare());
                yield top * Math.min(1, Math.min(u / t.accelerationShare(), (1 - u) / t.decelerationShare()));
            }
            case SCurve s -> {
                double b = s.accelerationShare();
                double r = b * s.jerkShare() / 2;
                double top = 1 / (1 - b);
                double highest = top / (b - r);
                double x = Math.min(u, 1 - u);
                double rest = Math.max(0, b - x);
                yield x < r
                        ? highest * x * x / 2 / r
                        : x < b - r ? highest * (x - r / 2) : top - highest * rest * rest / 2 / r;
            }
        };
    }

    private IllegalArgumentException unknown() {
        return new IllegalArgumentException("the oracle does not know " + axis.mechanism());
    }
}
