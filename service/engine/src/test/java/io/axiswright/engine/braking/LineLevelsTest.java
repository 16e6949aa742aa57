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
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The worst instant of a stop at each line voltage against stops begun at very many instants at that voltage. */
class LineLevelsTest {

    private static final long SEED = 815;
    private static final int SAMPLES = 2000;
    private static final double CAPACITANCE = 3e-3;
    private static final double[] FLOORS = {746.7, 678.8, 611};

    private final Bus high = Bus.of(CAPACITANCE, FLOORS[0], 900);

    private static List<BrakingAxis> axes(SplittableRandom random, int others) {
        List<BrakingAxis> axes = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double inertia = random.nextDouble(0.002, 0.02);
            double ramp = random.nextDouble(0.05, 0.3);
            double run = random.nextDouble(0.1, 0.4);
            DriveUnit unit = unit(random.nextDouble(0.8, 2), random.nextDouble(5, 40), 1e-3, 900);
            var course = shuttle(inertia, random.nextDouble(30, 200), ramp, run, 2 - 2 * ramp - run);
            axes.add(
                    k < others
                            ? axis(k, "bus", unit, course)
                            : axis(k, "bus", ZONE.id(), unit, course, inertia, random.nextDouble(0.1, 0.4)));
        }
        return axes;
    }

    private Chopper chopper(double resistance, Bus bus) {
        return resistance == 0 ? Chopper.NONE : Chopper.of(brakingUnit("b", 1, resistance), bus);
    }

    private CaseOutcome worstAt(double floor, GroupLoads loads, double resistance) {
        GroupRun run = loads.on(high, chopper(resistance, high));
        Bus bus = Bus.of(CAPACITANCE, floor, 900);
        return loads.again(run, high, bus, chopper(resistance, bus)).cases().get(1);
    }

    private static double sampled(double floor, GroupLoads loads, Chopper chopper, double period) {
        Bus bus = Bus.of(CAPACITANCE, floor, 900);
        CaseOutcome cycle = loads.cycle().on(bus, chopper).outcome();
        StopOnBus stop = ((StopLoad) loads.stops().getFirst()).onBus(bus, chopper, cycle);
        double highest = 0;
        for (int k = 0; k < SAMPLES; k++) {
            double instant = period * (k + 0.5) / SAMPLES;
            highest = Math.max(highest, stop.voltage().value(instant, instant));
        }
        return highest;
    }

    @Test
    void noInstantIsWorseAtAnyLine() {
        for (int run = 0; run < 12; run++) {
            var random = new SplittableRandom(SEED + run);
            GroupLoads loads = GroupLoads.of(axes(random, run % 3), List.of(ZONE), true);
            double resistance = run % 2 == 0 ? 0 : random.nextDouble(60, 400);
            for (double floor : FLOORS) {
                CaseOutcome found = worstAt(floor, loads, resistance);
                double highest = sampled(floor, loads, chopper(resistance, high), 2);
                assertThat(highest)
                        .as("run %d of seed %d at %f V", run, SEED, floor)
                        .isLessThanOrEqualTo(found.provenEnergy() + 1e-9)
                        .isGreaterThan(found.provenEnergy() * (1 - 2e-3));
            }
        }
    }

    /**
     * A stop from the fast run begins while the other axis draws 12 kW: the bus sinks to the rectifier's voltage, and only from
     * that of high line does the rest of the stop lift it over switch-on again. At low line the stop from the slower run is the
     * worst, begun with nobody drawing: 0.04 kg·m² at 170 rad/s within 0.8 s return 1445 W at first, the resistor takes 780²/440
     * = 1382.7 W at 780 V, and the power falls by 1806.25 W/s: at most 62.3²/(2·1806.25) = 1.074 J more than at switch-on, less
     * what the resistor takes more for the higher voltage.
     */
    @Test
    void lowLineMayHaveAWorstInstantOfItsOwn() {
        DriveUnit unit = unit(50, 0, 1e-3, 900);
        double inertia = 0.04;
        var stopping = course(
                stretch(0.1, 0, 2000, inertia * 2000),
                stretch(0.03, 200, 0, 0),
                stretch(0.12, 200, -200 / 0.12, -inertia * 200 / 0.12),
                stretch(0.25, 0, 0, 0),
                stretch(0.2, 0, 850, inertia * 850),
                stretch(0.1, 170, 0, 0),
                stretch(1.2, 170, -170 / 1.2, -inertia * 170 / 1.2));
        var drawing = course(stretch(0.26, 100, 0, 120), stretch(1.74, 0, 0, 0));
        GroupLoads loads = GroupLoads.of(
                List.of(axis(0, "bus", ZONE.id(), unit, stopping, inertia, 0.8), axis(1, "bus", unit, drawing)),
                List.of(ZONE),
                true);
        CaseOutcome atHigh = worstAt(FLOORS[0], loads, 400);
        CaseOutcome atLow = worstAt(FLOORS[2], loads, 400);
        double on = high.energy(780);
        assertThat(instant(atHigh)).isBetween(0.1, 0.14);
        assertThat(atHigh.peakEnergy() - on).isGreaterThan(2);
        assertThat(instant(atLow)).isBetween(0.7, 0.81);
        assertThat(atLow.peakEnergy() - on).isBetween(0.5, 1.074);
        double highest = sampled(FLOORS[2], loads, chopper(400, high), 2);
        assertThat(highest).isCloseTo(atLow.provenEnergy(), within(2e-3));
        assertThat(highest).isLessThanOrEqualTo(atLow.provenEnergy() + 1e-9);
    }

    private static double instant(CaseOutcome outcome) {
        CaseOutcome.Worst worst = outcome.worst();
        return worst == null ? Double.NaN : worst.found().instant();
    }
}
