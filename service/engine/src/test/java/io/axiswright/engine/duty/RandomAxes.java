package io.axiswright.engine.duty;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomInstant;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DriveSelection;
import io.axiswright.engine.design.DriveWish;
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
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.quantity.Acceleration;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearAcceleration;
import io.axiswright.engine.quantity.LinearDamping;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Speed;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import io.axiswright.engine.quantity.Velocity;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** Axes of every mechanism, with every law, drawn from a seed. */
final class RandomAxes {

    private final SplittableRandom random;

    RandomAxes(long seed) {
        random = new SplittableRandom(seed);
    }

    Axis next(String id) {
        return next(id, mechanism(), 1);
    }

    /** An axis whose torque changes along its way, or one of the mechanisms beside those of {@link #next}. */
    Axis nextUneven(String id) {
        Mechanism mechanism = new RandomMechanisms(this).next();
        return next(id, mechanism, mechanism instanceof Hoist ? 8 : 1);
    }

    /** An axis whose torque and inertia change over the time of its cycle. */
    Axis nextTimed(String id) {
        RotaryTable any = new RotaryTable(new Inertia(1), new Torque(0), 1, null);
        Axis axis = next(id, any, 1);
        double period = new TorqueOracle(axis, 0).period();
        List<CustomInstant> instants = new ArrayList<>();
        double time = period * between(0, 0.2);
        while (time < period) {
            instants.add(
                    new CustomInstant(new Time(time), new Torque(between(-5, 5)), new Inertia(between(0.01, 0.2))));
            time += period * between(0.02, 0.3);
        }
        Custom custom = new Custom(
                instants,
                random.nextBoolean() ? null : new Torque(between(0, 1)),
                random.nextBoolean() ? null : new RotaryDamping(between(0, 0.5)));
        return Copies.with(axis, "mechanism", custom);
    }

    private Axis next(String id, Mechanism mechanism, double stretch) {
        List<Segment> segments = new ArrayList<>();
        int count = 2 + random.nextInt(5);
        double back = 0;
        for (int k = 0; k < count; k++) {
            switch (random.nextInt(8)) {
                case 0, 1 -> segments.add(dwell(mechanism));
                case 2 -> {
                    if (unbounded(mechanism)) {
                        segments.addAll(run(mechanism));
                    } else if (back == 0) {
                        segments.add(thereAndBack(mechanism));
                    }
                }
                case 3 -> {
                    if (unbounded(mechanism)) {
                        segments.add(random.nextBoolean() ? jog(mechanism) : course(mechanism));
                    } else if (back == 0) {
                        segments.add(thereAndBack(mechanism));
                    }
                }
                default -> {
                    // there and back again: ropes and rolls have ends
                    double distance = back == 0 || unbounded(mechanism)
                            ? stretch * between(0.02, 0.5) * (random.nextBoolean() || !unbounded(mechanism) ? 1 : -1)
                            : -back;
                    back = back == 0 ? distance : 0;
                    segments.add(move(mechanism, distance));
                }
            }
        }
        if (segments.isEmpty()) {
            segments.add(dwell(mechanism));
        }
        Gear[] gears = new Gear[random.nextInt(3)];
        for (int k = 0; k < gears.length; k++) {
            gears[k] = new Gear(
                    between(2, 8),
                    between(0.7, 1),
                    orNull(0.6),
                    new Inertia(between(0, 1e-4)),
                    random.nextBoolean() ? null : new Torque(between(0, 0.3)));
        }
        DriveSelection drive = new DriveWish()
                .ventilated(random.nextBoolean())
                .braked(random.nextBoolean())
                .made();
        return Fixtures.geared(id, mechanism, List.of(gears), drive, segments.toArray(Segment[]::new));
    }

    double between(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    int upTo(int bound) {
        return random.nextInt(bound);
    }

    private Mechanism mechanism() {
        Angle slope = new Angle(random.nextBoolean() ? 0 : between(-1.5, 1.5));
        Friction friction = random.nextBoolean()
                ? null
                : new Friction(between(0, 0.2), new Force(between(0, 50)), new LinearDamping(between(0, 80)));
        return switch (random.nextInt(5)) {
            case 0 ->
                new Screw(
                        new Length(between(0.005, 0.04)),
                        new Length(between(0.012, 0.04)),
                        new Length(between(0.2, 2)),
                        new Mass(between(5, 200)),
                        slope,
                        between(0.35, 0.98),
                        orNull(0.5),
                        friction);
            case 1 ->
                new Belt(
                        new Length(between(0.02, 0.1)),
                        new Inertia(between(0, 1e-3)),
                        new Mass(between(1, 40)),
                        slope,
                        between(0.9, 1),
                        orNull(0.9),
                        friction);
            case 2 ->
                new RackAndPinion(
                        new Length(between(0.03, 0.12)),
                        new Inertia(between(0, 1e-3)),
                        new Mass(between(5, 150)),
                        slope,
                        between(0.85, 1),
                        orNull(0.8),
                        friction);
            case 3 ->
                new RotaryTable(
                        new Inertia(between(0.01, 2)),
                        new Torque(between(0, 3)),
                        between(0.7, 1),
                        null,
                        null,
                        new RotaryDamping(between(0, 0.5)));
            default ->
                new Hoist(
                        new Length(between(0.05, 0.3)),
                        new Inertia(between(0, 0.01)),
                        new Mass(between(5, 100)),
                        random.nextBoolean() ? null : new Mass(between(1, 120)),
                        1 + random.nextInt(4),
                        between(0.8, 1),
                        orNull(0.7));
        };
    }

    private static boolean unbounded(Mechanism mechanism) {
        return !(mechanism instanceof Winder
                || mechanism instanceof Hoist hoist && hoist.rope() != null
                || mechanism instanceof Custom custom && !custom.turns());
    }

    private Segment move(Mechanism mechanism, double distance) {
        Displacement travel = mechanism.movesByAngle() ? new Angle(6 * distance) : new Length(distance);
        return new Move(travel, new Time(between(0.2, 1.5)), law(), payload(mechanism), process(mechanism));
    }

    private Segment dwell(Mechanism mechanism) {
        return new Dwell(new Time(between(0.05, 1)), payload(mechanism), process(mechanism), random.nextBoolean());
    }

    /** Lead-in, run, reversal at speed, run back, lead-out: ramps of every kind. */
    private List<Segment> run(Mechanism mechanism) {
        boolean rotary = mechanism.movesByAngle();
        Velocity out = speed(rotary, between(0.05, 0.5));
        Velocity back = speed(rotary, -between(0.05, 0.5));
        double factor = rotary ? 6 : 1;
        Acceleration even = rotary ? new AngularAcceleration(between(2, 20)) : new LinearAcceleration(between(0.5, 3));
        Payload payload = payload(mechanism);
        Effort process = process(mechanism);
        return List.of(
                new Ramp(null, out, null, null, even, orNull(0), payload, process),
                new Run(out, new Time(between(0.1, 1)), null, payload, process),
                new Ramp(out, back, new Time(between(0.1, 0.5)), null, null, orNull(0), payload, process),
                new Run(back, null, displacement(rotary, -factor * between(0.05, 0.2)), payload, process),
                new Ramp(
                        back,
                        null,
                        null,
                        displacement(rotary, -factor * between(0.02, 0.1)),
                        null,
                        orNull(0),
                        payload,
                        process));
    }

    private Segment jog(Mechanism mechanism) {
        boolean rotary = mechanism.movesByAngle();
        double way = random.nextBoolean() ? 1 : -1;
        double factor = way * (rotary ? 6 : 1);
        return new Jog(
                speed(rotary, way * between(0.05, 0.5)),
                new Leg(new Time(between(0.05, 0.5)), null, null),
                new Leg(null, displacement(rotary, factor * between(0.05, 0.3)), null),
                new Leg(
                        null,
                        null,
                        rotary ? new AngularAcceleration(between(2, 20)) : new LinearAcceleration(between(0.5, 3))),
                payload(mechanism),
                process(mechanism));
    }

    private Segment course(Mechanism mechanism) {
        boolean rotary = mechanism.movesByAngle();
        List<SpeedPoint> points = new ArrayList<>();
        double time = between(-1, 1);
        int count = 2 + random.nextInt(5);
        for (int k = 0; k <= count; k++) {
            double size = k == 0 || k == count ? 0 : between(-0.4, 0.4);
            points.add(new SpeedPoint(new Time(time), speed(rotary, size)));
            time += between(0.1, 0.5);
        }
        return new SpeedCourse(points, payload(mechanism), process(mechanism));
    }

    /** A course that comes back to where it began without ever being behind it. */
    private Segment thereAndBack(Mechanism mechanism) {
        boolean rotary = mechanism.movesByAngle();
        double size = between(0.05, 0.4);
        double time = between(0.1, 0.4);
        return new SpeedCourse(
                List.of(
                        new SpeedPoint(new Time(0), speed(rotary, 0)),
                        new SpeedPoint(new Time(time), speed(rotary, size)),
                        new SpeedPoint(new Time(3 * time), speed(rotary, -size)),
                        new SpeedPoint(new Time(4 * time), speed(rotary, 0))),
                payload(mechanism),
                process(mechanism));
    }

    private static Velocity speed(boolean rotary, double size) {
        return rotary ? new AngularSpeed(6 * size) : new Speed(size);
    }

    private static Displacement displacement(boolean rotary, double size) {
        return rotary ? new Angle(size) : new Length(size);
    }

    private MotionLaw law() {
        return switch (random.nextInt(9)) {
            case 3 -> new SimpleHarmonic();
            case 4 -> new Cycloidal();
            case 5 -> new Polynomial4567();
            case 6 -> new ModifiedSine();
            case 7 -> new ModifiedTrapezoid();
            case 0 -> new Trapezoidal(between(0.05, 0.5), between(0.05, 0.5));
            case 1 -> new Triangular();
            case 2 -> new SCurve(between(0.05, 0.5), between(0.05, 1));
            default -> new Polynomial345();
        };
    }

    private @Nullable Payload payload(Mechanism mechanism) {
        if (random.nextBoolean() || mechanism instanceof Winder) {
            return null;
        }
        return mechanism.carriesMass() ? new Mass(between(0, 20)) : new Inertia(between(0, 0.5));
    }

    private @Nullable Effort process(Mechanism mechanism) {
        if (random.nextInt(3) > 0) {
            return null;
        }
        return mechanism.carriesMass() ? new Force(between(-100, 100)) : new Torque(between(-3, 3));
    }

    @Nullable
    Double orNull(double least) {
        return random.nextBoolean() ? null : Double.valueOf(between(least, 1));
    }
}
