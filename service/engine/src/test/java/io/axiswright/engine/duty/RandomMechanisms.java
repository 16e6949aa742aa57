package io.axiswright.engine.duty;

import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.CustomPoint;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.HoistRope;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Roller;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.design.Unbalance;
import io.axiswright.engine.design.Winder;
import io.axiswright.engine.design.WinderMotion;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearDamping;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Mechanisms of every kind the {@link ShaftOracle} knows. */
final class RandomMechanisms {

    private final RandomAxes random;

    RandomMechanisms(RandomAxes random) {
        this.random = random;
    }

    Mechanism next() {
        return switch (random.upTo(7)) {
            case 0 -> crank();
            case 1 -> winder();
            case 2 -> hoist();
            case 3 -> conveyor();
            case 4 -> custom();
            case 5 ->
                new RotaryTable(
                        new Inertia(between(0.05, 2)),
                        new Torque(between(0, 3)),
                        between(0.7, 1),
                        random.orNull(0.6),
                        unbalance(),
                        damping());
            default ->
                new DirectDrive(
                        new Inertia(between(0.05, 2)),
                        random.upTo(2) == 0 ? null : new Torque(between(0, 1)),
                        random.upTo(2) == 0 ? null : unbalance(),
                        damping());
        };
    }

    private @Nullable RotaryDamping damping() {
        return random.upTo(2) == 0 ? null : new RotaryDamping(between(0, 0.5));
    }

    private Crank crank() {
        double radius = between(0.02, 0.2);
        boolean rodded = random.upTo(3) != 0;
        Length offset = rodded && random.upTo(2) == 0 ? new Length(radius * between(-0.45, 0.45)) : null;
        return new Crank(
                new Length(radius),
                rodded ? new Length(radius * between(1.5, 6)) : null,
                new Inertia(between(0, 0.05)),
                new Mass(between(1, 60)),
                slope(),
                new Angle(between(-6, 6)),
                between(0.8, 1),
                random.orNull(0.7),
                friction(),
                offset,
                rodded ? new Mass(between(0, 10)) : null,
                null);
    }

    private Winder winder() {
        double core = between(0.08, 0.2);
        double full = core * between(2, 5);
        return new Winder(
                random.upTo(2) == 0 ? WinderMotion.LINE : WinderMotion.SHAFT,
                new Length(core),
                new Inertia(between(0, 0.01)),
                new Length(full),
                new Mass(between(5, 80)),
                new Length(between(0.0001, 0.003)),
                new Length(core * between(1.2, 1.4)),
                new Force(between(0, 200)),
                random.upTo(2) == 0 ? null : new Torque(between(0, 2)),
                between(0.8, 1),
                random.orNull(0.7));
    }

    private Hoist hoist() {
        Mass counterweight = random.upTo(2) == 0 ? null : new Mass(between(10, 150));
        return new Hoist(
                new Length(between(0.05, 0.3)),
                new Inertia(between(0, 0.01)),
                new Mass(between(5, 100)),
                counterweight,
                1,
                between(0.8, 1),
                random.orNull(0.7),
                new HoistRope(
                        new Mass(between(1, 40)),
                        new Length(10),
                        new Length(between(0, 5)),
                        counterweight != null && random.upTo(2) == 0));
    }

    private Conveyor conveyor() {
        return new Conveyor(
                new Length(between(0.05, 0.4)),
                new Inertia(between(0, 0.02)),
                random.upTo(2) == 0 ? null : new Roller(new Length(between(0.05, 0.3)), new Inertia(between(0, 0.02))),
                random.upTo(2) == 0 ? null : new Roller(new Length(0.06), new Inertia(between(0, 1e-3))),
                random.upTo(40),
                new Mass(between(0, 80)),
                new Mass(between(0, 200)),
                slope(),
                between(0.8, 1),
                random.orNull(0.7),
                friction());
    }

    private Custom custom() {
        List<CustomPoint> points = new ArrayList<>();
        double angle = -4;
        for (int k = 0; k < 8; k++) {
            points.add(new CustomPoint(new Angle(angle), new Torque(between(-5, 5)), new Inertia(between(0.01, 0.2))));
            angle += between(0.5, 2);
        }
        boolean repeats = random.upTo(2) == 0;
        if (repeats) {
            points.add(new CustomPoint(
                    new Angle(angle),
                    points.getFirst().torque(),
                    points.getFirst().inertia()));
        }
        Angle start = new Angle(between(-4, -3.5));
        @Nullable Torque friction = random.upTo(2) == 0 ? null : new Torque(between(0, 1));
        return new Custom(
                points,
                TableInterpolation.LINEAR,
                repeats,
                start,
                friction,
                friction == null ? null : new RotaryDamping(friction.si() / 5),
                null);
    }

    private Unbalance unbalance() {
        return new Unbalance(
                new Mass(between(1, 50)),
                new Length(between(0, 0.3)),
                new Angle(between(0, Math.PI / 2)),
                new Angle(between(-3, 3)));
    }

    private Angle slope() {
        return new Angle(random.upTo(2) == 0 ? 0 : between(-1.5, 1.5));
    }

    private @Nullable Friction friction() {
        return random.upTo(2) == 0
                ? null
                : new Friction(between(0, 0.2), new Force(between(0, 50)), new LinearDamping(between(0, 80)));
    }

    private double between(double from, double to) {
        return random.between(from, to);
    }
}
