package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;

import io.axiswright.engine.duty.UnevenAxes;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The worst instant of a stop of cranks, winders, ropes, unbalanced tables and tables of torque, against very many stops. */
class UnevenWorstStopTest {

    private static final long SEED = 521;
    private static final int SAMPLES = 1500;

    /** As a share of the bus's energy at high line: what is left of a search that ends by proof, and of one that gives up. */
    private static final double CLOSED = 2e-6;

    private static final double LEFT = 1e-3;

    /** No sampled stop rises above the bound; the bound is reached nearly, and the sample comes near to it. */
    @Test
    void noInstantIsWorseThanTheBound() {
        UnevenAxes axes = new UnevenAxes(SEED);
        int seen = 0;
        int closed = 0;
        for (int run = 0; run < 30; run++) {
            var random = new SplittableRandom(SEED + run);
            var next = axes.next("run " + run + " of seed " + SEED, random.nextDouble(0.1, 0.5));
            if (next.isPresent()) {
                closed += isBounded(next.get(), random, run % 2 == 0) ? 1 : 0;
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(15);
        assertThat(closed).isGreaterThan(seen * 3 / 4);
    }

    /** Of an axis with a bus that holds about what a stop returns; whether the search ended by proof. */
    private static boolean isBounded(UnevenAxes.Moving axis, SplittableRandom random, boolean chops) {
        double power = axis.peakTorque() * axis.peakSpeed();
        double km = Math.sqrt(axis.peakTorque() / (random.nextDouble(0.05, 0.3) * axis.peakSpeed()));
        double capacitance = power * axis.stops().duration() / (746.7 * 746.7);
        Bus bus = Bus.of(capacitance, 746.7, 1200);
        double resistance = 780 * 780 / (random.nextDouble(0.05, 0.3) * power);
        Chopper chopper = chops ? Chopper.of(brakingUnit("b", 1, resistance), bus) : Chopper.NONE;
        var moving = new BrakingAxis(
                0, axis.id(), null, ZONE.id(), unit(km, 0.01 * power, capacitance, 1200), axis.course(), axis.stops());
        GroupLoads loads = GroupLoads.of(List.of(moving), List.of(ZONE), true);
        CaseOutcome cycle = loads.cycle().on(bus, chopper).outcome();
        StopLoad load = (StopLoad) loads.stops().getFirst();
        CaseOutcome found = load.on(bus, chopper, cycle).getFirst();
        StopOnBus stop = load.onBus(bus, chopper, cycle);
        double highest = 0;
        for (int k = 0; k < SAMPLES; k++) {
            double instant = axis.course().duration() * (k + 0.5) / SAMPLES;
            highest = Math.max(highest, stop.voltage().value(instant, instant));
        }
        double floor = bus.floorEnergy();
        CaseOutcome.Worst worst = found.worst();
        boolean closed = worst != null && worst.found().evaluations() < 1000;
        assertThat(highest).as(axis.id()).isLessThanOrEqualTo(found.provenEnergy() + 1e-9 * floor);
        assertThat(found.provenEnergy() - found.peakEnergy())
                .as(axis.id())
                .isBetween(-1e-9 * floor, (closed ? CLOSED : LEFT) * floor);
        // and the sample, fine as it is, comes close: the bound is no empty one
        assertThat(highest - floor)
                .as(axis.id())
                .isGreaterThanOrEqualTo(0.98 * (found.provenEnergy() - floor) - CLOSED * floor);
        return closed;
    }
}
