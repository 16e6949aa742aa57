package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Gear;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Jog;
import io.axiswright.engine.design.Leg;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.ModifiedSine;
import io.axiswright.engine.design.ModifiedTrapezoid;
import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.Polynomial4567;
import io.axiswright.engine.design.PositionCourse;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Ramp;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Run;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.SimpleHarmonic;
import io.axiswright.engine.design.SpeedCourse;
import io.axiswright.engine.design.SpeedPoint;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
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
    private static final double PI = Math.PI;
    private static final double EDGE = 1e-6;
    private static final GaussIntegrator COARSE = new GaussIntegratorFactory().legendre(10);

    private final Axis axis;
    private final double inertia;
    private final Map<Segment, Double> starts = new IdentityHashMap<>();
    private final Map<Segment, Ways> ways = new IdentityHashMap<>();

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
        return integral(integrand, 0);
    }

    /** The same to 12 digits of a scale where the integral itself may be next to nothing. */
    double integral(ToDoubleFunction<State> integrand, double scale) {
        double rough = scale;
        for (int k = 0; k < 200; k++) {
            rough += Math.abs(integrand.applyAsDouble(at(period() * (k + 0.5) / 200))) * period() / 200;
        }
        double sum = 0;
        for (Segment segment : axis.cycle().segments()) {
            List<Double> cuts = withKinks(segment, withCourse(segment, cuts(segment)));
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
                .mapToDouble(TorqueOracle::duration)
                .sum();
    }

    State at(double instant) {
        double left = instant;
        for (Segment segment : axis.cycle().segments()) {
            if (left < duration(segment)) {
                return state(segment, left);
            }
            left -= duration(segment);
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

    /** Adds the instants at which a course over the time of the cycle has corners. */
    private List<Double> withCourse(Segment segment, List<Double> cuts) {
        List<Double> all = new ArrayList<>(cuts);
        if (axis.mechanism() instanceof Custom custom && custom.instants() != null) {
            custom.instants().stream()
                    .map(instant -> instant.time().si() - before(segment))
                    .filter(t -> t > 0 && t < duration(segment))
                    .forEach(all::add);
        }
        all.sort(null);
        return all;
    }

    /** How long the cycle lasts until a segment begins. */
    private double before(Segment segment) {
        double time = 0;
        for (Segment other : axis.cycle().segments()) {
            if (other == segment) {
                break;
            }
            time += duration(other);
        }
        return time;
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
                corner(segment, grid[j], grid[j + 1], all);
            }
        }
        all.sort(null);
        return all;
    }

    /** Adds the instant at which a mechanism passes a corner of its curves. */
    private void corner(Segment segment, double from, double to, List<Double> all) {
        if (segment instanceof Dwell || !ShaftOracle.knows(axis.mechanism())) {
            return;
        }
        double start = startOf(segment);
        double left = from;
        double right = to;
        int before = ShaftOracle.stretch(axis.mechanism(), start + gone(segment, left));
        if (before == ShaftOracle.stretch(axis.mechanism(), start + gone(segment, right))) {
            return;
        }
        for (int k = 0; k < 60; k++) {
            double middle = (left + right) / 2;
            if (ShaftOracle.stretch(axis.mechanism(), start + gone(segment, middle)) == before) {
                left = middle;
            } else {
                right = middle;
            }
        }
        all.add((left + right) / 2);
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
        double end = duration(segment);
        List<Double> cuts = new ArrayList<>(List.of(0.0, end));
        if (segment instanceof Move move) {
            switch (move.law()) {
                case Trapezoidal t -> {
                    cuts.add(share(t.accelerationShare()) * end);
                    cuts.add((1 - share(t.decelerationShare())) * end);
                }
                case SCurve s -> {
                    double b = share(s.accelerationShare());
                    double r = b * share(s.jerkShare()) / 2;
                    for (double u : new double[] {r, b - r, b}) {
                        cuts.add(u * end);
                        cuts.add((1 - u) * end);
                    }
                }
                case ModifiedSine m -> cuts.addAll(List.of(end / 8, 7 * end / 8));
                case ModifiedTrapezoid m -> cuts.addAll(List.of(end / 8, 3 * end / 8, 5 * end / 8, 7 * end / 8));
                default -> cuts.add(end / 2);
            }
        }
        switch (segment) {
            case Ramp ramp -> {
                double share = ramp.jerkShare() == null ? 0 : ramp.jerkShare();
                cuts.addAll(List.of(share / 2 * end, (1 - share / 2) * end));
                double from = si(ramp.startSpeed());
                double to = si(ramp.endSpeed());
                if (from * to < 0) {
                    double left = 0;
                    double right = 1;
                    for (int k = 0; k < 100; k++) {
                        double middle = (left + right) / 2;
                        if ((from + (to - from) * blend(share, middle)) * from > 0) {
                            left = middle;
                        } else {
                            right = middle;
                        }
                    }
                    cuts.add(left * end);
                }
            }
            case Jog jog -> {
                cuts.add(leg(jog.starting(), 0, si(jog.speed())));
                cuts.add(end - leg(jog.stopping(), si(jog.speed()), 0));
            }
            case SpeedCourse course -> {
                double first = course.points().getFirst().time().si();
                for (int k = 1; k < course.points().size(); k++) {
                    SpeedPoint one = course.points().get(k - 1);
                    SpeedPoint two = course.points().get(k);
                    cuts.add(two.time().si() - first);
                    double v = one.speed().si();
                    double w = two.speed().si();
                    if (v * w < 0) {
                        cuts.add(one.time().si()
                                - first
                                + v / (v - w) * (two.time().si() - one.time().si()));
                    }
                }
            }
            default -> {}
        }
        cuts.sort(null);
        return cuts;
    }

    private State state(Segment segment, double instant) {
        if (segment instanceof Dwell dwell) {
            boolean held = dwell.brakeHolds() && axis.drive().holdingBrake();
            return new State(0, held ? 0 : holding(dwell, instant), 0, 0, 0, 0, new double[10]);
        }
        return moving(segment, instant, rate(segment, instant));
    }

    /** Speed and acceleration of the load, and a number with the sign of the speed. */
    private record Rate(double speed, double acceleration, double way) {}

    private static Rate rate(Segment segment, double instant) {
        double time = duration(segment);
        double u = instant / time;
        return switch (segment) {
            case Move move -> {
                double mean = si(move.distance()) / time;
                yield new Rate(mean * speed(move.law(), u), mean / time * acceleration(move.law(), u), mean);
            }
            case Dwell dwell -> new Rate(0, 0, 0);
            case Run run -> new Rate(run.speed().si(), 0, run.speed().si());
            case Ramp ramp -> {
                double from = si(ramp.startSpeed());
                double change = si(ramp.endSpeed()) - from;
                double share = ramp.jerkShare() == null ? 0 : ramp.jerkShare();
                double v = from + change * blend(share, u);
                yield new Rate(v, change / time * slope(share, u), v);
            }
            case Jog jog -> {
                double v = jog.speed().si();
                double up = leg(jog.starting(), 0, v);
                double down = leg(jog.stopping(), v, 0);
                yield instant < up
                        ? new Rate(v * instant / up, v / up, v)
                        : instant > time - down
                                ? new Rate(v * (time - instant) / down, -v / down, v)
                                : new Rate(v, 0, v);
            }
            case SpeedCourse course -> {
                double at = instant + course.points().getFirst().time().si();
                int k = 1;
                while (k < course.points().size() - 1
                        && course.points().get(k).time().si() < at) {
                    k++;
                }
                SpeedPoint one = course.points().get(k - 1);
                SpeedPoint two = course.points().get(k);
                double a = (two.speed().si() - one.speed().si())
                        / (two.time().si() - one.time().si());
                double v = one.speed().si() + a * (at - one.time().si());
                yield new Rate(v, a, v);
            }
            case PositionCourse course -> throw new IllegalArgumentException("not modelled");
            case TorqueCourse course -> throw new IllegalArgumentException("not modelled");
        };
    }

    static double duration(Segment segment) {
        return switch (segment) {
            case Move move -> si(move.duration());
            case Dwell dwell -> dwell.duration().si();
            case Run run -> run.duration() != null ? si(run.duration()) : si(run.distance()) / si(run.speed());
            case Ramp ramp -> {
                double share = ramp.jerkShare() == null ? 0 : ramp.jerkShare();
                Leg leg = new Leg(ramp.duration(), ramp.distance(), ramp.acceleration());
                yield leg.acceleration() == null
                        ? leg(leg, si(ramp.startSpeed()), si(ramp.endSpeed()))
                        : leg(leg, si(ramp.startSpeed()), si(ramp.endSpeed())) / (1 - share / 2);
            }
            case Jog jog ->
                leg(jog.starting(), 0, si(jog.speed()))
                        + leg(jog.running(), si(jog.speed()), si(jog.speed()))
                        + leg(jog.stopping(), si(jog.speed()), 0);
            case SpeedCourse course ->
                course.points().getLast().time().si()
                        - course.points().getFirst().time().si();
            case PositionCourse course -> throw new IllegalArgumentException("not modelled");
            case TorqueCourse course -> throw new IllegalArgumentException("not modelled");
        };
    }

    /** Even change of speed. */
    private static double leg(Leg leg, double from, double to) {
        return leg.duration() != null
                ? si(leg.duration())
                : leg.distance() != null
                        ? si(leg.distance()) / ((from + to) / 2)
                        : Math.abs(to - from) / si(leg.acceleration());
    }

    /** Share of a change of speed done after a share of its time: acceleration a trapezoid with ramps of half the share. */
    private static double blend(double share, double u) {
        double r = share / 2;
        double x = Math.min(u, 1 - u);
        double done = x < r ? x * x / 2 / r / (1 - r) : (x - r / 2) / (1 - r);
        return u < 0.5 ? done : 1 - done;
    }

    private static double slope(double share, double u) {
        double r = share / 2;
        double x = Math.min(u, 1 - u);
        return Math.min(1, r == 0 ? 1 : x / r) / (1 - r);
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

    private double holding(Dwell dwell, double instant) {
        double payload = si(dwell.payload());
        double process = si(dwell.processEffort());
        if (selfLocking()) {
            return 0;
        }
        if (axis.mechanism() instanceof Custom custom && custom.instants() != null) {
            return ShaftOracle.timed(custom, before(dwell) + instant, 0, 0, payload, process, 0)
                            .torque()
                    / ratio();
        }
        if (ShaftOracle.knows(axis.mechanism())) {
            return ShaftOracle.at(axis.mechanism(), startOf(dwell), 0, 0, payload, process, 0)
                            .torque()
                    / ratio();
        }
        return (weight(payload) + process) * lever() / ratio();
    }

    /** Where the load is when a segment begins. */
    private double startOf(Segment segment) {
        return starts.computeIfAbsent(segment, this::summed);
    }

    private double summed(Segment segment) {
        double position = ShaftOracle.start(axis.mechanism());
        for (Segment before : axis.cycle().segments()) {
            if (before == segment) {
                break;
            }
            position += before instanceof Move move ? si(move.distance()) : gone(before, duration(before));
        }
        return position;
    }

    /** How far a segment has gone when each of its cuts is reached. */
    private record Ways(double[] cuts, double[] gone) {}

    /** How far a segment has gone: its speed summed up by quadrature from cut to cut. */
    private double gone(Segment segment, double instant) {
        Ways ways = this.ways.computeIfAbsent(segment, TorqueOracle::waysOf);
        int k = 0;
        while (k < ways.cuts.length - 2 && ways.cuts[k + 1] <= instant) {
            k++;
        }
        return ways.gone[k] + between(segment, ways.cuts[k], instant);
    }

    private static Ways waysOf(Segment segment) {
        double[] cuts = cuts(segment).stream().mapToDouble(t -> t).toArray();
        double[] gone = new double[cuts.length];
        for (int k = 1; k < cuts.length; k++) {
            gone[k] = gone[k - 1] + between(segment, cuts[k - 1], cuts[k]);
        }
        return new Ways(cuts, gone);
    }

    private static double between(Segment segment, double from, double to) {
        double half = (to - from) / 2;
        return half * COARSE.integrate(x -> rate(segment, from + half * (x + 1)).speed());
    }

    private ShaftOracle.Shaft shaft(Segment segment, double instant, double v, double a, double direction) {
        double payload = si(segment.payload());
        double process = si(segment.processEffort());
        if (axis.mechanism() instanceof Custom custom && custom.instants() != null) {
            return ShaftOracle.timed(custom, before(segment) + instant, v, a, payload, process, direction);
        }
        if (ShaftOracle.knows(axis.mechanism())) {
            double position = startOf(segment) + gone(segment, instant);
            return ShaftOracle.at(axis.mechanism(), position, v, a, payload, process, direction);
        }
        Friction friction = friction();
        double coulomb = axis.mechanism() instanceof RotaryTable table
                ? table.bearingFriction().si()
                : friction == null
                        ? 0
                        : friction.coefficient() * G * Math.cos(slope()) * (mass() + payload) + si(friction.drag());
        double viscous = axis.mechanism() instanceof RotaryTable table
                ? si(table.viscousFriction())
                : friction == null ? 0 : si(friction.viscous());
        double moved = mass() + payload + (axis.mechanism() instanceof Hoist hoist ? si(hoist.counterweight()) : 0);
        double resisting = direction * coulomb + viscous * v;
        double drag =
                axis.mechanism() instanceof Screw screw ? si(screw.preloadTorque()) + si(screw.bearingFriction()) : 0;
        return new ShaftOracle.Shaft(
                (moved * a + weight(payload) + process + resisting) * lever(),
                v / lever(),
                a / lever(),
                shaftInertia(),
                drag,
                resisting * v,
                process * v,
                weight(payload) * v);
    }

    private State moving(Segment segment, double instant, Rate rate) {
        double direction = Math.signum(rate.way);
        ShaftOracle.Shaft mechanism = shaft(segment, instant, rate.speed, rate.acceleration, direction);
        double shaftSpeed = mechanism.speed();
        double acceleration = mechanism.acceleration();
        double before = mechanism.torque();
        double after = throughElement(before, direction, efficiency(), backDriving());
        double shaft = after + mechanism.inertia() * acceleration + direction * mechanism.drag();
        double loss = (after - before) * shaftSpeed + mechanism.drag() * Math.abs(shaftSpeed);
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
                    + (first ? 0 : gear.inertia().si() * acceleration * turns);
        }
        double torque = shaft + inertia * acceleration * turns;
        switches[which] = torque;
        return new State(
                shaftSpeed * ratio(),
                torque,
                mechanism.friction(),
                mechanism.process(),
                mechanism.lifting(),
                loss,
                switches);
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
            case Conveyor c -> c.efficiency();
            case Crank c -> c.efficiency();
            case Winder w -> w.efficiency();
            case DirectDrive _, Custom _ -> 1;
            case Belt b -> b.efficiency();
            case RackAndPinion r -> r.efficiency();
            case RotaryTable t -> t.efficiency();
            case Hoist h -> h.efficiency();
        };
    }

    private @Nullable Double backDriving() {
        return switch (axis.mechanism()) {
            case Screw s -> s.backDrivingEfficiency();
            case Conveyor c -> c.backDrivingEfficiency();
            case Crank c -> c.backDrivingEfficiency();
            case Winder w -> w.backDrivingEfficiency();
            case DirectDrive _, Custom _ -> null;
            case Belt b -> b.backDrivingEfficiency();
            case RackAndPinion r -> r.backDrivingEfficiency();
            case RotaryTable t -> t.backDrivingEfficiency();
            case Hoist h -> h.backDrivingEfficiency();
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

    private static double share(@Nullable Double stated) {
        return java.util.Objects.requireNonNull(stated);
    }

    private static double si(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }

    private static double acceleration(MotionLaw law, double u) {
        return switch (law) {
            case Triangular t -> u < 0.5 ? 4 : -4;
            case SimpleHarmonic h -> PI * PI / 2 * Math.cos(PI * u);
            case Cycloidal c -> 2 * PI * Math.sin(2 * PI * u);
            case Polynomial4567 p -> 420 * Math.pow(u * (1 - u), 2) * (1 - 2 * u);
            case ModifiedSine m -> {
                double x = Math.min(u, 1 - u);
                double size =
                        4 * PI * PI / (4 + PI) * (x < 0.125 ? Math.sin(4 * PI * x) : Math.sin((4 * PI * x + PI) / 3));
                yield u < 0.5 ? size : -size;
            }
            case ModifiedTrapezoid m -> {
                double x = Math.min(u, 1 - u);
                double size = 8
                        * PI
                        / (2 + PI)
                        * (x < 0.125 ? Math.sin(4 * PI * x) : x < 0.375 ? 1 : Math.cos(4 * PI * (x - 0.375)));
                yield u < 0.5 ? size : -size;
            }
            case Polynomial345 p -> 60 * u * (1 - u) * (1 - 2 * u);
            case Trapezoidal t -> {
                double rising = share(t.accelerationShare());
                double falling = share(t.decelerationShare());
                double top = 2 / (2 - rising - falling);
                yield u < rising ? top / rising : u > 1 - falling ? -top / falling : 0;
            }
            case SCurve s -> {
                double b = share(s.accelerationShare());
                double r = b * share(s.jerkShare()) / 2;
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
            case SimpleHarmonic h -> PI / 2 * Math.sin(PI * u);
            case Cycloidal c -> 1 - Math.cos(2 * PI * u);
            case Polynomial4567 p -> 140 * Math.pow(u * (1 - u), 3);
            case ModifiedSine m -> {
                double x = Math.min(u, 1 - u);
                double peak = 4 * PI * PI / (4 + PI);
                double eighth = peak / 4 / PI;
                yield x < 0.125
                        ? eighth * (1 - Math.cos(4 * PI * x))
                        : eighth - 3 * eighth * (Math.cos((4 * PI * x + PI) / 3) - Math.cos(PI / 2));
            }
            case ModifiedTrapezoid m -> {
                double x = Math.min(u, 1 - u);
                double peak = 8 * PI / (2 + PI);
                double eighth = peak / 4 / PI;
                yield x < 0.125
                        ? eighth * (1 - Math.cos(4 * PI * x))
                        : x < 0.375
                                ? eighth + peak * (x - 0.125)
                                : eighth + peak / 4 + eighth * Math.sin(4 * PI * (x - 0.375));
            }
            case Polynomial345 p -> 30 * u * u * (1 - u) * (1 - u);
            case Trapezoidal t -> {
                double rising = share(t.accelerationShare());
                double falling = share(t.decelerationShare());
                double top = 2 / (2 - rising - falling);
                yield top * Math.min(1, Math.min(u / rising, (1 - u) / falling));
            }
            case SCurve s -> {
                double b = share(s.accelerationShare());
                double r = b * share(s.jerkShare()) / 2;
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
