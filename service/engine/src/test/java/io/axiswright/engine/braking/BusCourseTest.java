package io.axiswright.engine.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Courses to be drawn, against the exact ones. */
class BusCourseTest {

    private static final Temperature AMBIENT = new Temperature(300);

    private record Scene(Bus bus, Chopper chopper, BusPower power) {

        static Scene of(long seed) {
            var random = new SplittableRandom(seed);
            List<PowerCourse> courses = new ArrayList<>();
            for (int k = 0; k < random.nextInt(1, 4); k++) {
                List<PowerCourse.Piece> pieces = new ArrayList<>();
                double start = 0;
                for (int n = 0; n < 4; n++) {
                    double length = random.nextDouble(0.02, 0.15);
                    double[] power = new double[random.nextInt(1, 6)];
                    for (int c = 0; c < power.length; c++) {
                        power[c] = random.nextDouble(-8000, 9000) / Math.pow(length, c);
                    }
                    pieces.add(new PowerCourse.Piece(start, start + length, Polynomial.of(power)));
                    start += length;
                }
                courses.add(new PowerCourse(pieces, start));
            }
            Bus bus = Bus.of(random.nextDouble(1e-3, 4e-3), 600, 820);
            Chopper chopper = random.nextInt(3) == 0
                    ? Chopper.NONE
                    : new Chopper(
                            bus.energy(780),
                            bus.energy(765),
                            2 / (random.nextDouble(15, 60) * bus.capacitance()),
                            400,
                            300);
            return new Scene(bus, chopper, BusPower.once(courses));
        }

        Replay replay() {
            return new Replay(power, new BusState(bus.floorEnergy(), false, 0), chopper);
        }
    }

    /** Voltage from simulations that end at the instant asked for; power from the segments themselves. */
    @Test
    void straightLinesStayWithinTheToleranceOfTheExactCourse() {
        for (long seed = 1; seed <= 40; seed++) {
            Scene scene = Scene.of(seed);
            double share = seed % 2 == 0 ? 1e-3 : 1e-2;
            BusCourse course = Objects.requireNonNull(CourseDrawing.of(scene.replay(), scene.bus(), share, AMBIENT));
            assertThat(course.tolerance()).as("seed %d", seed).isGreaterThanOrEqualTo(share);
            List<BusCourse.Point> points = course.points();
            double voltages = range(points, p -> p.voltage().si());
            double powers = range(points, p -> p.returnedPower().si());
            int at = 0;
            for (int k = 1; k < 400; k++) {
                double instant = scene.power().duration() * (k + 0.37) / 400.37;
                while (points.get(at + 1).instant().si() < instant) {
                    at++;
                }
                BusCourse.Point from = points.get(at);
                BusCourse.Point to = points.get(at + 1);
                double x = (instant - from.instant().si())
                        / (to.instant().si() - from.instant().si());
                BusPower upTo = cut(scene.power(), instant);
                BusTrace trace = new BusSimulation(scene.bus(), scene.chopper())
                        .run(upTo, scene.replay().start(), new BusLog(Integer.MAX_VALUE));
                assertThat(from.voltage().si()
                                + x * (to.voltage().si() - from.voltage().si()))
                        .as("voltage, seed %d, %s s", seed, instant)
                        .isCloseTo(
                                scene.bus().voltage(trace.end().energy()),
                                within(1.001 * course.tolerance() * voltages));
                PowerSegment last = upTo.segments().getLast();
                assertThat(from.returnedPower().si()
                                + x
                                        * (to.returnedPower().si()
                                                - from.returnedPower().si()))
                        .as("power, seed %d, %s s", seed, instant)
                        .isCloseTo(last.slope(last.to()), within(1.001 * course.tolerance() * powers));
            }
        }
    }

    private static double range(List<BusCourse.Point> points, java.util.function.ToDoubleFunction<BusCourse.Point> of) {
        var statistics = points.stream().mapToDouble(of).summaryStatistics();
        return statistics.getMax() - statistics.getMin();
    }

    private static BusPower cut(BusPower power, double instant) {
        List<PowerSegment> kept = new ArrayList<>();
        for (PowerSegment segment : power.segments()) {
            double end = instant - segment.instant(0);
            if (end >= segment.to()) {
                kept.add(segment);
            } else if (end > segment.from()) {
                double[] coefficients = segment.powerFrom(segment.from());
                double length = end - segment.from();
                kept.add(new PowerSegment(
                        segment.instant(segment.from()), 0, length, coefficients, Horner.antiderivative(coefficients)));
            }
        }
        return new BusPower(kept, instant);
    }

    @Test
    void eventsAndExtremesAreAmongThePoints() {
        int chopped = 0;
        for (long seed = 1; seed <= 40; seed++) {
            Scene scene = Scene.of(seed);
            BusCourse course = Objects.requireNonNull(CourseDrawing.of(scene.replay(), scene.bus(), 1e-2, AMBIENT));
            var log = new BusLog(Integer.MAX_VALUE);
            BusTrace trace = new BusSimulation(scene.bus(), scene.chopper())
                    .run(scene.power(), scene.replay().start(), log);
            List<Double> instants =
                    course.points().stream().map(p -> p.instant().si()).toList();
            assertThat(instants).as("seed %d", seed).isSorted();
            assertThat(instants.getFirst()).isZero();
            assertThat(instants.getLast()).isCloseTo(scene.power().duration(), within(1e-12));
            BusMode before = null;
            for (BusNode node : log.nodes()) {
                if (before != null && node.mode() != before) {
                    chopped += node.mode() == BusMode.CHOPPING ? 1 : 0;
                    assertThat(instants).as("seed %d", seed).anyMatch(t -> Math.abs(t - node.instant()) < 1e-12);
                }
                before = node.mode();
            }
            for (double event : new double[] {trace.peakInstant(), trace.tripInstant()}) {
                if (!Double.isNaN(event)) {
                    assertThat(instants).as("seed %d", seed).anyMatch(t -> Math.abs(t - event) < 1e-12);
                }
            }
            assertThat(course.points().stream()
                            .mapToDouble(p -> p.voltage().si())
                            .max()
                            .orElse(0))
                    .as("seed %d", seed)
                    .isCloseTo(scene.bus().voltage(trace.peakEnergy()), within(1e-9));
            assertThat(course.points().stream()
                            .mapToDouble(p -> Objects.requireNonNull(p.resistorTemperature())
                                    .si())
                            .max()
                            .orElse(0))
                    .as("seed %d", seed)
                    .isCloseTo(300 + trace.peakRise(), within(1e-9));
            assertThat(course.points()).hasSizeLessThanOrEqualTo(CourseDrawing.MOST_POINTS);
        }
        assertThat(chopped).isGreaterThan(20);
    }

    /** A long descent switches far too often for so narrow a tolerance: the one reached is said. */
    @Test
    void tooManyPointsWidenTheTolerance() {
        Bus bus = Bus.of(1e-3, 600, 820);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (30 * 1e-3), 4000, 300);
        var descent = new PowerCourse(List.of(new PowerCourse.Piece(0, 12, Polynomial.of(8000))), 12);
        var replay = new Replay(BusPower.once(List.of(descent)), new BusState(bus.floorEnergy(), false, 0), chopper);
        BusCourse course = Objects.requireNonNull(CourseDrawing.of(replay, bus, 1e-4, AMBIENT));
        assertThat(course.points()).hasSizeLessThanOrEqualTo(CourseDrawing.MOST_POINTS);
        assertThat(course.tolerance()).isGreaterThan(1e-4);
        var endless = new PowerCourse(List.of(new PowerCourse.Piece(0, 6000, Polynomial.of(8000))), 6000);
        var tooLong = new Replay(BusPower.once(List.of(endless)), new BusState(bus.floorEnergy(), false, 0), chopper);
        assertThat(CourseDrawing.of(tooLong, bus, 1e-4, AMBIENT)).isNull();
    }

    /**
     * A stop of 566.86 J under a chopper of 780/765 V on 1 mF: the real bus switches, it does not stand at 780 V. Each time it
     * falls by ½·1 mF·(780² − 765²) V² = 11.6 J; while 5952 W falling to 0 come and 780²/44 Ω = 13.8 kW go, that many times that
     * 566.86 J are burned: at least 566.86/11.6 − 2, each burning as much and what comes meanwhile, at most half of what goes.
     */
    @Test
    void theCourseOfAStopShowsTheSwitching() {
        BrakingRequest plain = BrakingFixtures.request(
                List.of(BrakingFixtures.axis(
                        0,
                        null,
                        BrakingFixtures.ZONE.id(),
                        BrakingFixtures.unit(1.5, 20, 1e-3, 820),
                        BrakingFixtures.shuttle(0.02, 250, 0.2, 0.5, 0.6),
                        0.02,
                        0.2)),
                BrakingFixtures.brakingUnit("b", 1, 40));
        BrakingRequest drawing = Copies.with(plain, "timeCourses", new TimeCourses(null));
        BrakingCase stop =
                new BrakingStudy().study(drawing).groups().getFirst().cases().get(1);
        assertThat(stop.kind()).isEqualTo(CaseKind.STOP_ZONE);
        List<BusCourse.Point> points = Objects.requireNonNull(stop.course()).points();
        assertThat(points).allSatisfy(p -> assertThat(p.voltage().si()).isLessThanOrEqualTo(780 + 1e-9));
        long switched = points.stream()
                .filter(p -> Math.abs(p.voltage().si() - 765) < 1e-6)
                .count();
        assertThat(switched).isBetween(24L, 49L);
    }

    @Test
    void courseIsDrawnOnlyWhereAskedFor() {
        BrakingRequest plain = BrakingFixtures.request(List.of(BrakingFixtures.axis(
                0,
                null,
                BrakingFixtures.unit(1.5, 20, 1e-3, 820),
                BrakingFixtures.shuttle(0.001, 150, 0.1, 0.3, 0.5))));
        BrakingRequest drawing = Copies.with(plain, "timeCourses", new TimeCourses(null));
        var without = new BrakingStudy().study(plain).groups().getFirst().cases();
        var with = new BrakingStudy().study(drawing).groups().getFirst().cases();
        assertThat(without).allMatch(c -> c.course() == null);
        assertThat(with).allMatch(c -> c.course() != null);
        BusCourse course = Objects.requireNonNull(with.getFirst().course());
        assertThat(course.tolerance()).isEqualTo(1e-3);
        assertThat(course.points().getFirst().voltage().si())
                .isCloseTo(with.getFirst().startVoltage().si(), within(1e-9));
        assertThat(course.points().getLast().voltage().si())
                .isCloseTo(with.getFirst().endVoltage().si(), within(1e-9));
    }
}
