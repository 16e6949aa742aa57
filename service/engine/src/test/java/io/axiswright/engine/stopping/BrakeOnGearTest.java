package io.axiswright.engine.stopping;

import static io.axiswright.engine.stopping.StoppingFixtures.brake;
import static io.axiswright.engine.stopping.StoppingFixtures.shuttle;
import static io.axiswright.engine.stopping.StoppingFixtures.study;
import static io.axiswright.engine.stopping.StoppingFixtures.zone;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.duty.CoastLoad;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a holding brake that closes on a turning shaft brings on the gear unit behind it. */
class BrakeOnGearTest {

    private static final long SEED = 60204;

    private static CoastLoad geared(double inertia, double weight, double friction, double viscous, double efficiency) {
        return new CoastLoad(
                inertia,
                weight,
                friction,
                viscous,
                List.of(
                        new CoastLoad.Link(1, 1, 1, 0, 0),
                        new CoastLoad.Link(10, efficiency, 2 - 1 / efficiency, 0, 0)),
                0.001);
    }

    private static StoppingResult stop(CoastLoad load, double speed, double bearable, @Nullable Double share) {
        var axis = new StoppingAxis(
                0,
                "z",
                "zone",
                shuttle(load, speed, 0.2, 0.6, 1, load.weight() != 0),
                brake(6, 0.05, share, 1e6),
                new Torque(bearable),
                null);
        return study(zone(StopCategory.CATEGORY_1, 0.03, 0.4), axis);
    }

    private static double torque(StoppingResult result) {
        return Objects.requireNonNull(result.powerLosses().getFirst().gearTorque())
                .si();
    }

    /**
     * By hand: 0.9 kg·m² behind 10 : 1 are 0.009 kg·m² at the motor, 0.01 with its own 0.001. 6 N·m stop it with 600 rad/s², 60
     * behind the gear: 0.9·60 = 54 N·m. A weight of 5 N·m that drives it down leaves 5.5 N·m and 55 rad/s²: 49.5 + 5 = 54.5 N·m;
     * going up it helps the brake, 65 rad/s², 58.5 − 5 = 53.5 N·m, but after that speed is gone 54.5 again: falling from rest.
     */
    @Test
    void byHand() {
        assertThat(torque(stop(geared(0.9, 0, 0, 0, 1), 100, 100, null))).isCloseTo(54, within(1e-9));
        assertThat(torque(stop(geared(0.9, 5, 0, 0, 1), -100, 100, null))).isCloseTo(54.5, within(1e-9));
        assertThat(torque(stop(geared(0.9, 5, 0, 0, 1), 100, 100, null))).isCloseTo(54.5, within(1e-9));
        // a brake that stops with two thirds of its torque when worn still closes with all of it when it is not
        assertThat(torque(stop(geared(0.9, 0, 0, 0, 1), 100, 100, 2.0 / 3))).isCloseTo(54, within(1e-9));
    }

    /**
     * The load drives the gear against the brake: of M at its output (2 − 1/0.9)·M/10 = 8/9·M/10 get to the brake. With a at the
     * output, 6 = 0.001·10·a + 8/9·0.9·a/10 = 0.09·a, so a = 66.667 rad/s² and M = 0.9·66.667 = 60 N·m.
     */
    @Test
    void lossesInTheGearHelpTheBrake() {
        assertThat(torque(stop(geared(0.9, 0, 0, 0, 0.9), 100, 100, null))).isCloseTo(60, within(1e-9));
    }

    @Test
    void aGearUnitThatBearsLessIsSaid() {
        StoppingResult weak = stop(geared(0.9, 0, 0, 0, 1), 100, 53, 1.0);
        assertThat(weak.findings().getFirst().code()).isEqualTo(FindingCode.STOPPING_GEAR_TORQUE_HIGH);
        assertThat(weak.findings().getFirst().text()).contains("54 N.m", "53 N.m");
        assertThat(weak.findings().getFirst().pointer()).isEqualTo("/design/axes/0/drive");
        assertThat(stop(geared(0.9, 0, 0, 0, 1), 100, 55, 1.0).findings()).isEmpty();
    }

    /** Stops from very many speeds, followed in small steps: none exceeds the torque told, and some comes close. */
    @Test
    void noStopBringsMore() {
        for (int run = 0; run < 30; run++) {
            var random = new SplittableRandom(SEED + run);
            double inertia = random.nextDouble(0.02, 2);
            double friction = random.nextDouble(0, 10);
            double viscous = run % 2 == 0 ? 0 : random.nextDouble(0, 2);
            double efficiency = random.nextDouble(0.7, 1);
            double top = random.nextDouble(50, 300);
            double told = torque(stop(geared(inertia, 0, friction, viscous, efficiency), top, 1000, null));
            double seen = 0;
            for (int k = 1; k <= 200; k++) {
                seen = Math.max(seen, stepped(inertia, friction, viscous, efficiency, top * k / 200));
            }
            assertThat(seen)
                    .as("run %d of seed %d", run, SEED)
                    .isLessThanOrEqualTo(told * (1 + 1e-6) + 1e-9)
                    .isGreaterThanOrEqualTo(told * (1 - 1e-2) - 1e-9);
        }
    }

    /** Coasts for 50 ms and brakes to rest, in steps of 0.1 ms; the highest torque at the output while the brake is closed. */
    private static double stepped(double inertia, double friction, double viscous, double efficiency, double from) {
        double speed = from; // of the motor
        double highest = 0;
        for (int step = 0; speed > 0; step++) {
            double closed = step < 500 ? 0 : 6;
            double resisting = friction + viscous * speed / 10;
            double passed = (2 - 1 / efficiency) / 10; // the load drives
            double slowing = (closed + passed * resisting) / (0.001 + passed * inertia / 10);
            double torque = inertia * slowing / 10 - resisting;
            if (torque < 0) { // the motor's inertia drives
                passed = 1 / efficiency / 10;
                slowing = (closed + passed * resisting) / (0.001 + passed * inertia / 10);
                torque = inertia * slowing / 10 - resisting;
            }
            highest = closed > 0 ? Math.max(highest, Math.abs(torque)) : highest;
            speed -= slowing * 1e-4;
            if (slowing <= 0) {
                break;
            }
        }
        return highest;
    }
}
