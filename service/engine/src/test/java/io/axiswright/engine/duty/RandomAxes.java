package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Cycloidal;
import io.axiswright.engine.design.DriveSelection;
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
        Mechanism mechanism = mechanism();
        boolean rotary = mechanism instanceof RotaryTable;
        List<Segment> segments = new ArrayList<>();
        int count = 2 + random.nextInt(5);
        for (int k = 0; k < count; k++) {
            switch (random.nextInt(8)) {
                case 0, 1 -> segments.add(dwell(rotary));
                case 2 -> segments.addAll(run(rotary));
                case 3 -> segments.add(random.nextBoolean() ? jog(rotary) : course(rotary));
                default -> segments.add(move(rotary));
            }
        }
        Gear gear = random.nextBoolean()
                ? null
                : new Gear(between(2, 30), between(0.7, 1), orNull(0.6), new Inertia(between(0, 1e-4)));
        DriveSelection drive = new DriveSelection(null, null, random.nextBoolean(), random.nextBoolean(), false);
        return Fixtures.axis(id, mechanism, gear, drive, segments.toArray(Segment[]::new));
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
            case 3 -> new RotaryTable(new Inertia(between(0.01, 2)), new Torque(between(0, 3)), between(0.7, 1), null);
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

    private Segment move(boolean rotary) {
        double distance = between(0.02, 0.5) * (random.nextBoolean() ? 1 : -1);
        Displacement travel = rotary ? new Angle(6 * distance) : new Length(distance);
        return new Move(travel, new Time(between(0.2, 1.5)), law(), payload(rotary), process(rotary));
    }

    private Segment dwell(boolean rotary) {
        return new Dwell(new Time(between(0.05, 1)), payload(rotary), process(rotary), random.nextBoolean());
    }

    /** Lead-in, run, reversal at speed, run back, lead-out: ramps of every kind. */
    private List<Segment> run(boolean rotary) {
        Velocity out = speed(rotary, between(0.05, 0.5));
        Velocity back = speed(rotary, -between(0.05, 0.5));
        double factor = rotary ? 6 : 1;
        Acceleration even = rotary ? new AngularAcceleration(between(2, 20)) : new LinearAcceleration(between(0.5, 3));
        Payload payload = payload(rotary);
        Effort process = process(rotary);
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

    private Segment jog(boolean rotary) {
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
                payload(rotary),
                process(rotary));
    }

    private Segment course(boolean rotary) {
        List<SpeedPoint> points = new ArrayList<>();
        double time = between(-1, 1);
        int count = 2 + random.nextInt(5);
        for (int k = 0; k <= count; k++) {
            double size = k == 0 || k == count ? 0 : between(-0.4, 0.4);
            points.add(new SpeedPoint(new Time(time), speed(rotary, size)));
            time += between(0.1, 0.5);
        }
        return new SpeedCourse(points, payload(rotary), process(rotary));
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

    private @Nullable Payload payload(boolean rotary) {
        if (random.nextBoolean()) {
            return null;
        }
        return rotary ? new Inertia(between(0, 0.5)) : new Mass(between(0, 20));
    }

    private @Nullable Effort process(boolean rotary) {
        if (random.nextInt(3) > 0) {
            return null;
        }
        return rotary ? new Torque(between(-3, 3)) : new Force(between(-100, 100));
    }

    private @Nullable Double orNull(double least) {
        return random.nextBoolean() ? null : Double.valueOf(between(least, 1));
    }
}
