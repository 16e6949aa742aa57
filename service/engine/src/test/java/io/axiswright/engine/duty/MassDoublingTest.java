package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Friction;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.LinearDamping;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Time;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Twice the mass asks for no less torque, at its peak and, without losses, on the mean of squares, over a cycle that goes back as it
 * came: inertia, weight and rubbing all grow, and over such a cycle what does not grow (the motor's own inertia, drag, viscous
 * friction) sides with the one as with the other. Two cases turn it round and are told: a process that helps the mass, and a load
 * lowered in a hurry, whose weight helps to speed the motor up.
 */
class MassDoublingTest {

    private static Mechanism mechanism(SplittableRandom random, int kind, double factor, boolean lossless) {
        Mass load = new Mass(factor * random.nextDouble(1, 200));
        Angle slope = new Angle(random.nextDouble(-1.5, 1.5));
        Friction friction = new Friction(
                random.nextDouble(0.2), new Force(random.nextDouble(50)), new LinearDamping(random.nextDouble(40)));
        double efficiency = lossless ? 1 : random.nextDouble(0.6, 1);
        Length diameter = new Length(random.nextDouble(0.03, 0.2));
        Inertia inertia = new Inertia(random.nextDouble(1e-3));
        return switch (kind) {
            case 0 ->
                new Screw(
                        new Length(diameter.si() / 10),
                        new Length(0.02),
                        new Length(2),
                        load,
                        slope,
                        efficiency,
                        null,
                        friction);
            case 1 -> new Belt(diameter, inertia, load, slope, efficiency, null, friction, null, null, null);
            default -> new RackAndPinion(diameter, inertia, load, slope, efficiency, null, friction);
        };
    }

    @Test
    void twiceTheMassNeverAsksForLess() {
        for (int seed = 0; seed < 300; seed++) {
            assertThat(figures(seed, 2, false).peakTorque().si())
                    .as("peak, seed %d", seed)
                    .isGreaterThanOrEqualTo(figures(seed, 1, false).peakTorque().si());
            assertThat(figures(seed, 2, true).rmsTorque().si())
                    .as("rms, seed %d", seed)
                    .isGreaterThanOrEqualTo(figures(seed, 1, true).rmsTorque().si());
        }
    }

    private static DutyFigures figures(int seed, double factor, boolean lossless) {
        SplittableRandom random = new SplittableRandom(seed);
        Mechanism mechanism = mechanism(random, seed % 3, factor, lossless);
        double way = random.nextDouble(0.1, 1);
        double time = random.nextDouble(0.5, 3);
        double share = random.nextDouble(0.1, 0.5);
        return Fixtures.size(
                        Fixtures.axis(
                                "seed " + seed,
                                mechanism,
                                Fixtures.gear(random.nextDouble(1, 10), lossless ? 1 : random.nextDouble(0.8, 1)),
                                Fixtures.ANY,
                                Fixtures.travel(way, time, new Trapezoidal(share, share)),
                                Fixtures.dwell(random.nextDouble(0.1, 1)),
                                Fixtures.travel(-way, time, new Trapezoidal(share, share))),
                        Fixtures.unit("u", 20, 100))
                .figures();
    }

    /**
     * 0.2 m down in sqrt(0.4) s, a fifth of it speeding up: 10·0.2/0.4 = 5 m/s², on a pulley of 50 mm radius 100 rad/s². 0.1 kg·m² and
     * the rotor want J·100 of the motor, of which each kilogram takes 0.05·(9.80665 − 5) N·m off.
     */
    @Test
    void butWeightThatSpeedsTheMotorUpCanTurnItRound() {
        DriveUnit unit = Fixtures.unit("u", 20, 100);
        for (double mass : new double[] {1, 2}) {
            Belt belt = belt(mass, 0.1);
            Move down = Fixtures.travel(-0.2, Math.sqrt(0.4), new Trapezoidal(0.2, 0.8));
            Move up = Fixtures.travel(0.2, 10, new Trapezoidal(0.5, 0.5));
            double peak = Fixtures.size(Fixtures.axis("z", belt, null, Fixtures.ANY, down, up), unit)
                    .figures()
                    .peakTorque()
                    .si();
            double expected = (0.1 + unit.rotorInertia().si()) * 100 - mass * 0.05 * (9.80665 - 5);
            assertThat(peak).isCloseTo(expected, within(1e-9));
        }
    }

    /**
     * A belt straight up with 10 kg and a process that lifts with 20·9.80665 N: at rest the motor holds the process down with
     * 98.0665 N · 0.05 m = 4.903 N·m. With 20 kg the two balance, and hardly any torque is left.
     */
    @Test
    void butAProcessThatHelpsTheMassCanTurnItRound() {
        assertThat(held(10)).isCloseTo(98.0665 * 0.05, within(0.01));
        assertThat(held(20)).isLessThan(0.05);
    }

    private static double held(double mass) {
        Belt belt = belt(mass, 0);
        Force lifting = new Force(-20 * 9.80665);
        var slow = new Move(new Length(0.01), new Time(10), new Trapezoidal(0.5, 0.5), null, lifting);
        var back = new Move(new Length(-0.01), new Time(10), new Trapezoidal(0.5, 0.5), null, lifting);
        return Fixtures.size(Fixtures.axis("z", belt, null, Fixtures.ANY, slow, back), Fixtures.unit("u", 20, 100))
                .figures()
                .rmsTorque()
                .si();
    }

    private static Belt belt(double mass, double inertia) {
        return new Belt(
                new Length(0.1),
                new Inertia(inertia),
                new Mass(mass),
                new Angle(Math.PI / 2),
                1,
                null,
                null,
                null,
                null,
                null);
    }
}
