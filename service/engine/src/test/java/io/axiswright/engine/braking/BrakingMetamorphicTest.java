package io.axiswright.engine.braking;

import static io.axiswright.engine.braking.BrakingFixtures.ZONE;
import static io.axiswright.engine.braking.BrakingFixtures.axis;
import static io.axiswright.engine.braking.BrakingFixtures.brakingUnit;
import static io.axiswright.engine.braking.BrakingFixtures.shuttle;
import static io.axiswright.engine.braking.BrakingFixtures.stop;
import static io.axiswright.engine.braking.BrakingFixtures.study;
import static io.axiswright.engine.braking.BrakingFixtures.unit;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What must hold between two answers whatever either of them is. */
class BrakingMetamorphicTest {

    private static final long SEED = 77;

    private static BrakingAxis random(int index, SplittableRandom random, double capacitance) {
        double inertia = random.nextDouble(0.001, 0.01);
        double speed = random.nextDouble(30, 200);
        DriveUnit unit = unit(random.nextDouble(0.8, 2), random.nextDouble(5, 40), capacitance, 820);
        double ramp = random.nextDouble(0.05, 0.3);
        return axis(index, "bus", ZONE.id(), unit, shuttle(inertia, speed, ramp, 0.3, 1.7 - 2 * ramp), inertia, ramp);
    }

    private static List<BrakingAxis> axes(int run, double capacitance) {
        var random = new SplittableRandom(SEED + run);
        return IntStream.range(0, 3)
                .mapToObj(k -> random(k, random, capacitance))
                .toList();
    }

    private static GroupBraking only(List<BrakingAxis> axes) {
        return study(axes).groups().getFirst();
    }

    @Test
    void moreCapacitanceNeverRaisesThePeakBelowTheTrip() {
        int compared = 0;
        for (int run = 0; run < 200; run++) {
            GroupBraking less = only(axes(run, 1e-3));
            GroupBraking more = only(axes(run, 1.3e-3));
            if (less.verdict() != BrakingVerdict.NONE_FITS) {
                compared++;
                for (int k = 0; k < less.cases().size(); k++) {
                    assertThat(more.cases().get(k).peakVoltage().si())
                            .as("run %d of seed %d", run, SEED)
                            .isLessThanOrEqualTo(
                                    less.cases().get(k).peakVoltage().si() + 1e-9);
                }
            }
        }
        assertThat(compared).isBetween(20, 180);
    }

    @Test
    void theOrderOfTheAxesDoesNotMatter() {
        for (int run = 0; run < 50; run++) {
            List<BrakingAxis> axes = axes(run, 1e-3);
            GroupBraking forth = only(axes);
            GroupBraking back = only(axes.reversed());
            assertThat(back.verdict()).isEqualTo(forth.verdict());
            for (int k = 0; k < forth.cases().size(); k++) {
                assertThat(back.cases().get(k).peakVoltage().si())
                        .as("run %d of seed %d", run, SEED)
                        .isCloseTo(forth.cases().get(k).peakVoltage().si(), withPercentage(1e-8));
            }
        }
    }

    @Test
    void aPauseLongerByAnAxisAtRestOnlyCoolsAndDraws() {
        List<BrakingAxis> axes = axes(1, 1e-3);
        BrakingAxis idle = axis(3, "bus", unit(1, 0, 1e-9, 820), new Course(List.of()));
        BrakingCase without = only(axes).cases().getFirst();
        BrakingCase with = only(IntStream.range(0, 4)
                        .mapToObj(k -> k < 3 ? axes.get(k) : idle)
                        .toList())
                .cases()
                .getFirst();
        assertThat(with.returnedEnergy().si())
                .isCloseTo(without.returnedEnergy().si(), within(1e-9));
        assertThat(with.peakVoltage().si()).isCloseTo(without.peakVoltage().si(), within(1e-3));
    }

    /** Constant deceleration without drive loss: the longer the stop, the less power; and copper loss falls as 1/t. */
    @Test
    void aLongerStopWithoutStandbyReturnsLessPowerButMoreEnergyForLessGoesIntoCopper() {
        DriveUnit lossless = unit(1.5, 0, 1e-3, 820);
        double lastPower = Double.POSITIVE_INFINITY;
        double lastEnergy = 0;
        for (double time = 0.05; time < 1; time *= 1.3) {
            BusPower power = BusPower.once(List.of(PowerCourse.withLosses(stop(0.01, 200, time), lossless)));
            assertThat(power.peak()).isLessThan(lastPower);
            assertThat(power.returned()).isGreaterThan(lastEnergy);
            lastPower = power.peak();
            lastEnergy = power.returned();
        }
        assertThat(lastEnergy).isLessThan(0.01 * 200 * 200 / 2);
    }

    /** A piece cut in two is the same motion. */
    @Test
    void cuttingPiecesChangesNothing() {
        Course whole = shuttle(0.02, 250, 0.2, 0.5, 0.6);
        Course cut = new Course(whole.pieces().stream()
                .flatMap(p ->
                        List.of(part(p, 0, p.duration() * 0.37), part(p, p.duration() * 0.37, p.duration())).stream())
                .toList());
        DriveUnit unit = unit(1.5, 20, 1e-3, 820);
        BrakingCase one = study(List.of(axis(0, null, unit, whole)), brakingUnit("b", 1, 40))
                .groups()
                .getFirst()
                .cases()
                .getFirst();
        BrakingCase two = study(List.of(axis(0, null, unit, cut)), brakingUnit("b", 1, 40))
                .groups()
                .getFirst()
                .cases()
                .getFirst();
        assertThat(two.peakVoltage().si()).isCloseTo(one.peakVoltage().si(), withPercentage(1e-10));
        assertThat(two.resistorEnergy().si()).isCloseTo(one.resistorEnergy().si(), withPercentage(1e-6));
    }

    private static Course.Piece part(Course.Piece piece, double from, double to) {
        Polynomial speed = piece.speed().shifted(from);
        return new Course.Piece(
                piece.start() + from, to - from, speed, piece.torque().shifted(from));
    }

    /** Lower resistance brakes more: the peak never rises. */
    @Test
    void lowerResistanceNeverRaisesThePeak() {
        Bus bus = Bus.of(1e-3, 746.7, 820);
        for (int run = 0; run < 100; run++) {
            List<PowerCourse> courses = axes(run, 1e-3).stream()
                    .map(a -> PowerCourse.withLosses(a.course(), a.driveUnit()))
                    .toList();
            double last = Double.POSITIVE_INFINITY;
            for (double resistance = 150; resistance > 10; resistance /= 2) {
                var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (resistance * 1e-3), 400, 300);
                double peak =
                        CommonPeriod.load(courses).on(bus, chopper).outcome().peakEnergy();
                if (peak > bus.energy(780) * (1 + 1e-9)) {
                    assertThat(peak).as("run %d of seed %d", run, SEED).isLessThanOrEqualTo(last);
                }
                last = peak;
            }
        }
    }

    /** The energies of every case of the answer balance, whatever unit is at work. */
    @Test
    void everyCaseOfTheAnswerBalances() {
        for (int run = 0; run < 100; run++) {
            GroupBraking group = study(axes(run, 1e-3), brakingUnit("b", 1, 30), brakingUnit("c", 2, 15))
                    .groups()
                    .getFirst();
            for (BrakingCase one : group.cases()) {
                double stored = group.capacitance().si()
                        / 2
                        * (Math.pow(one.endVoltage().si(), 2)
                                - Math.pow(one.startVoltage().si(), 2));
                double gap = one.returnedEnergy().si()
                        - one.drawnEnergy().si()
                        + one.suppliedEnergy().si()
                        - one.resistorEnergy().si()
                        - stored;
                double scale = one.returnedEnergy().si() + one.drawnEnergy().si() + 300;
                assertThat(gap / scale)
                        .as("%s of run %d of seed %d", one.kind(), run, SEED)
                        .isBetween(-1e-9, 1e-9);
            }
        }
    }
}
