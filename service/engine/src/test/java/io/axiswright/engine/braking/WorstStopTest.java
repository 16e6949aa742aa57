package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.course;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.stretch;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The worst instant of a stop against stops begun at very many instants. */
class WorstStopTest {

    private static final long SEED = 4711;
    private static final double TOLERANCE = 1e-6;
    private static final int SAMPLES = 3000;

    private static List<BrakingAxis> axes(SplittableRandom random, int others) {
        List<BrakingAxis> axes = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double inertia = random.nextDouble(0.002, 0.02);
            double ramp = random.nextDouble(0.05, 0.3);
            double run = random.nextDouble(0.1, 0.4);
            DriveUnit unit = unit(random.nextDouble(0.8, 2), random.nextDouble(5, 40), 1e-3, 900);
            Course course = shuttle(inertia, random.nextDouble(30, 200), ramp, run, 2 - 2 * ramp - run);
            axes.add(
                    k < others
                            ? axis(k, "bus", unit, course)
                            : axis(k, "bus", ZONE.id(), unit, course, inertia, random.nextDouble(0.1, 0.4)));
        }
        return axes;
    }

    /** No sampled stop rises above the bound; the bound is reached to the tolerance stated, and the sample finds no better. */
    @Test
    void noInstantIsWorseThanTheOneFound() {
        int closed = 0;
        for (int run = 0; run < 24; run++) {
            var random = new SplittableRandom(SEED + run);
            List<BrakingAxis> axes = axes(random, run % 3);
            Bus bus = Bus.of(3e-3, 746.7, 900);
            Chopper chopper =
                    run % 2 == 0 ? Chopper.NONE : Chopper.of(brakingUnit("b", 1, random.nextDouble(60, 400)), bus);
            GroupLoads loads = GroupLoads.of(axes, List.of(ZONE), true);
            CaseOutcome cycle = loads.cycle().on(bus, chopper).outcome();
            StopLoad load = (StopLoad) loads.stops().getFirst();
            CaseOutcome found = load.on(bus, chopper, cycle).getFirst();
            StopOnBus stop = load.onBus(bus, chopper, cycle);
            double highest = 0;
            for (int k = 0; k < SAMPLES; k++) {
                double instant = 2 * (k + 0.5) / SAMPLES;
                highest = Math.max(highest, stop.voltage().value(instant, instant));
            }
            CaseOutcome.Worst worst = found.worst();
            assertThat(worst).isNotNull();
            double scale = TOLERANCE * bus.floorEnergy();
            assertThat(highest).as("run %d of seed %d", run, SEED).isLessThanOrEqualTo(found.provenEnergy() + 1e-9);
            if (worst != null && worst.found().evaluations() < 1000) {
                closed++;
                assertThat(found.provenEnergy() - found.peakEnergy())
                        .as("run %d of seed %d", run, SEED)
                        .isBetween(-2e-9, 2 * scale);
            }
            // and the sample, fine as it is, comes close: the bound is no empty one
            assertThat(highest).as("run %d of seed %d", run, SEED).isGreaterThan(found.provenEnergy() * (1 - 2e-3));
        }
        assertThat(closed).isGreaterThanOrEqualTo(18);
    }

    /**
     * By hand: 0.02 kg·m² at 250 rad/s carries 625 J. Braking evenly in 0.2 s with 25 N·m and K_m = 1.5 costs (25/1.5)² =
     * 277.8 W, standby 20 W: p = 6250·(1 − u/0.2) − 297.8 W, positive for 0.19047 s; returned ½·5952.2 W·0.19047 s = 566.86 J.
     */
    @Test
    void oneAxisByHand() {
        DriveUnit unit = unit(1.5, 20, 1e-2, 900);
        BrakingAxis axis = axis(0, null, ZONE.id(), unit, course(stretch(1, 250, 0, 0.2)), 0.02, 0.2);
        Bus bus = Bus.of(1e-2, 746.7, 900);
        GroupLoads loads = GroupLoads.of(List.of(axis), List.of(ZONE), true);
        CaseOutcome stop = loads.on(bus, Chopper.NONE).cases().get(1);
        double power = 6250 - 25 * 25 / 2.25 - 20;
        assertThat(stop.peakEnergy() - bus.floorEnergy()).isCloseTo(power * power / 6250 * 0.2 / 2, within(3e-3));
        assertThat(stop.provenEnergy() - stop.peakEnergy()).isBetween(0.0, 2e-6 * bus.floorEnergy());
    }

    /** The axis outside the zone draws the more the earlier in its ramp the stop begins: the instants are not all alike. */
    @Test
    void axesOutsideTheZoneGoOn() {
        DriveUnit unit = unit(1.5, 0, 5e-3, 900);
        Course running = course(stretch(1, 200, 0, 0));
        Course accelerating = course(stretch(0.5, 0, 200, 20), stretch(0.5, 100, -200, -20));
        BrakingAxis stops = axis(0, "bus", ZONE.id(), unit, running, 0.02, 0.1);
        Bus bus = Bus.of(1e-2, 746.7, 1200);
        GroupLoads alone = GroupLoads.of(List.of(stops), List.of(ZONE), true);
        GroupLoads both = GroupLoads.of(List.of(stops, axis(1, "bus", unit, accelerating)), List.of(ZONE), true);
        CaseOutcome one = alone.on(bus, Chopper.NONE).cases().get(1);
        CaseOutcome two = both.on(bus, Chopper.NONE).cases().get(1);
        assertThat(two.peakEnergy()).isGreaterThan(one.peakEnergy());
        CaseOutcome.Worst worst = two.worst();
        assertThat(worst).isNotNull();
        // with the other's braking: its ramp from 0.5 s on returns, and the stop tops what has come
        assertThat(worst == null ? 0 : worst.found().instant()).isBetween(0.5, 1.0);
    }

    /**
     * A level axis by hand, T = J·w/t. Energy lost in copper, (T/K_m)²·t, goes with 1/t, that of standing by with t. So a longer
     * stop raises the bus up to some top, and lowers it only beyond.
     */
    @Test
    void aLongerStopOfALevelAxisRaisesTheBusUpToATop() {
        Bus bus = Bus.of(1e-2, 746.7, 1000);
        double inertia = 0.008;
        double speed = 250;
        double last = 0;
        boolean falling = false;
        int rises = 0;
        int falls = 0;
        for (double time = 0.02; time < 10; time *= 1.3) {
            BrakingAxis level = axis(
                    0, null, ZONE.id(), unit(1.5, 20, 1e-2, 1000), course(stretch(1, speed, 0, 0.5)), inertia, time);
            CaseOutcome stop = GroupLoads.of(List.of(level), List.of(ZONE), true)
                    .on(bus, Chopper.NONE)
                    .cases()
                    .get(1);
            // p = T·w·(1 − u/t) − (T/K_m)² − P from full speed: the triangle above zero
            double torque = inertia * speed / time;
            double first = torque * speed - torque * torque / 2.25 - 20;
            double returned = first <= 0 ? 0 : first * first * time / (2 * torque * speed);
            double rise = stop.peakEnergy() - bus.floorEnergy();
            assertThat(rise).as("%s s", time).isCloseTo(returned, within(5e-3));
            if (rise > last) {
                assertThat(falling).as("one top only, %s s", time).isFalse();
                rises++;
            } else {
                falling = true;
                falls++;
            }
            last = rise;
        }
        assertThat(rises).isGreaterThan(5);
        assertThat(falls).isGreaterThan(5);
    }

    /** A sinking load returns the more the longer its stop takes: it sinks farther meanwhile. */
    @Test
    void aLongerStopOfASinkingLoadReturnsMore() {
        DriveUnit lossless = unit(50, 0, 1e-2, 900);
        double sunk = 0;
        for (double time = 0.05; time < 1.5; time *= 1.4) {
            // 5 N·m of weight against 0.02 kg·m² at 100 rad/s: returned ½·J·w² + 5 N·m·w·t/2
            double deceleration = 100 / time;
            BusPower power = BusPower.once(List.of(PowerCourse.withLosses(
                    course(stretch(time, 100, -deceleration, -5 - 0.02 * deceleration)), lossless)));
            assertThat(power.returned()).isGreaterThan(sunk);
            sunk = power.returned();
        }
    }
}
