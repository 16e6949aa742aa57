package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.powers;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.study;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.finding.FindingCode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Axes of one bus whose cycles have different periods. */
class UnrelatedPeriodsTest {

    private static final double ROOT = Math.sqrt(2);

    /** Periods of 3.0 s and 4.5 s: the bus repeats every 9 s. */
    @Test
    void commensurateCyclesAreFollowedOverTheirLeastCommonMultiple() {
        PowerCourse first = powers(new double[] {1, 2}, new double[] {100}, new double[] {-200});
        PowerCourse second = powers(new double[] {1, 3.5}, new double[] {50}, new double[] {-100});
        CycleOutcome outcome = CommonPeriod.load(List.of(first, second)).on(Bus.of(0.01, 600, 900), Chopper.NONE);
        assertThat(outcome.basis()).isEqualTo(CycleBasis.COMMON_MULTIPLE);
        assertThat(outcome.outcome().duration()).isCloseTo(9, within(1e-12));
        // by hand: at 0 both return 150 W for 1 s; at 3 and 6 the first returns 100 W against 100 W taken; at 4.5 the
        // second
        // returns 50 W against 200 W taken
        assertThat(outcome.outcome().returned()).isCloseTo(150, within(1e-9));
        assertThat(outcome.outcome().peakEnergy() - outcome.outcome().startEnergy())
                .isCloseTo(150, within(1e-9));
    }

    @Test
    void everyAlignmentStaysUnderTheBound() {
        PowerCourse first = powers(new double[] {0.2, 0.8}, new double[] {2000, -5000}, new double[] {-600});
        PowerCourse second = powers(
                new double[] {0.1, 0.3, 1.0142}, new double[] {900}, new double[] {-100}, new double[] {-150, 10});
        Bus bus = Bus.of(2e-3, 650, 900);
        CycleOutcome bound = CommonPeriod.load(List.of(first, second)).on(bus, Chopper.NONE);
        assertThat(bound.basis()).isEqualTo(CycleBasis.BOUND);
        // the first returns 400 − 100 = 300 J in 0.2 s, the second 90 J in 0.1 s
        assertThat(bound.outcome().peakEnergy() - bus.floorEnergy()).isCloseTo(390, within(1e-9));
        double highest = 0;
        var random = new SplittableRandom(5);
        for (int run = 0; run < 300; run++) {
            List<PowerCourse> rotated =
                    List.of(rotated(first, random.nextDouble()), rotated(second, random.nextDouble()));
            BusPower long50 = BusPower.repeating(rotated, 50);
            BusTrace trace =
                    new BusSimulation(bus, Chopper.NONE).run(long50, new BusState(bus.floorEnergy(), false, 0));
            assertThat(trace.peakEnergy())
                    .as("run %d of seed 5", run)
                    .isLessThanOrEqualTo(bound.outcome().peakEnergy() * (1 + 1e-9));
            highest = Math.max(highest, trace.peakEnergy());
        }
        // and it is reached, not merely safe: unrelated cycles come into every alignment
        assertThat(highest).isGreaterThan(bound.outcome().peakEnergy() - 20);
    }

    @Test
    void everyAlignmentStaysUnderTheBoundWithAChopper() {
        PowerCourse first = powers(new double[] {0.2, 0.8}, new double[] {9000, -40_000}, new double[] {-600});
        PowerCourse second = powers(new double[] {0.1, 1.3142}, new double[] {6000}, new double[] {-700});
        Bus bus = Bus.of(2e-3, 650, 900);
        // 780²/50 = 12.2 kW against a sum of peaks of 15 kW
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (50 * 2e-3), 400, 100);
        CaseOutcome bound =
                CommonPeriod.load(List.of(first, second)).on(bus, chopper).outcome();
        assertThat(bound.peakEnergy()).isGreaterThan(bus.energy(780)).isLessThan(bus.tripEnergy());
        var random = new SplittableRandom(6);
        for (int run = 0; run < 60; run++) {
            List<PowerCourse> rotated =
                    List.of(rotated(first, random.nextDouble()), rotated(second, random.nextDouble()));
            BusTrace trace = new BusSimulation(bus, chopper)
                    .run(BusPower.repeating(rotated, 100), new BusState(bus.floorEnergy(), false, 0));
            assertThat(trace.peakEnergy()).as("run %d of seed 6", run).isLessThanOrEqualTo(bound.peakEnergy());
            assertThat(trace.burned() / 100).as("run %d of seed 6", run).isLessThanOrEqualTo(bound.meanBurned());
            assertThat(trace.peakRise()).as("run %d of seed 6", run).isLessThanOrEqualTo(bound.peakRise());
        }
    }

    @Test
    void aResistorThatCoversTheSumOfThePeaksHoldsItsSwitchingVoltage() {
        PowerCourse first = powers(new double[] {0.2, 0.8}, new double[] {7000}, new double[] {-2000});
        PowerCourse second = powers(new double[] {0.2, 1.2142}, new double[] {5000}, new double[] {-2000});
        Bus bus = Bus.of(2e-3, 650, 820);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (50 * 2e-3), 400, 100);
        CaseOutcome bound =
                CommonPeriod.load(List.of(first, second)).on(bus, chopper).outcome();
        assertThat(bus.voltage(bound.peakEnergy())).isCloseTo(780, withPercentage(1e-9));
    }

    @Test
    void theStudySaysThatItIsABound() {
        var unit = unit(1.5, 20, 1e-3, 820);
        BrakingResult result = study(
                List.of(
                        axis(0, "bus", unit, shuttle(0.02, 250, 0.2, 0.5, 3)),
                        axis(1, "bus", unit, shuttle(0.02, 250, 0.2, 0.5, 3 * ROOT))),
                brakingUnit("b", 1, 25));
        GroupBraking group = result.groups().getFirst();
        assertThat(group.cycleBasis()).isEqualTo(CycleBasis.BOUND);
        assertThat(group.verdict()).isEqualTo(BrakingVerdict.NEEDS_BRAKING_UNIT);
        assertThat(group.cases().getFirst().peakInstant()).isNull();
        assertThat(result.findings()).extracting(f -> f.code()).contains(FindingCode.BRAKING_CYCLES_UNRELATED);
    }

    /** The same cycle begun at another of its instants. */
    private static PowerCourse rotated(PowerCourse course, double share) {
        double cut = share * course.duration();
        var head = new java.util.ArrayList<PowerCourse.Piece>();
        var tail = new java.util.ArrayList<PowerCourse.Piece>();
        for (PowerCourse.Piece piece : course.pieces()) {
            double from = Math.max(piece.start(), cut);
            if (from < piece.end()) {
                head.add(new PowerCourse.Piece(
                        from - cut, piece.end() - cut, piece.power().shifted(from - piece.start())));
            }
            if (piece.start() < cut) {
                tail.add(new PowerCourse.Piece(
                        piece.start() + course.duration() - cut,
                        Math.min(piece.end(), cut) + course.duration() - cut,
                        piece.power()));
            }
        }
        head.addAll(tail);
        return new PowerCourse(head, course.duration());
    }
}
