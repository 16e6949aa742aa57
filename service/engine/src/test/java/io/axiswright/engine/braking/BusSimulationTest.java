package io.axiswright.engine.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The event-by-event simulation against adaptive integration, and its own balance of energy. */
class BusSimulationTest {

    private record Random(List<PowerCourse> courses, Bus bus, Chopper chopper) {

        static Random of(long seed) {
            var random = new SplittableRandom(seed);
            List<PowerCourse> courses = new ArrayList<>();
            int axes = random.nextInt(1, 5);
            for (int k = 0; k < axes; k++) {
                courses.add(course(random));
            }
            double capacitance = random.nextDouble(0.5e-3, 4e-3);
            Bus bus = Bus.of(capacitance, random.nextDouble(540, 740), random.nextDouble(800, 850));
            double on = random.nextDouble(760, 790);
            double off = on - random.nextDouble(5, 19);
            double resistance = random.nextDouble(15, 120);
            boolean present = random.nextInt(4) > 0;
            Chopper chopper = present
                    ? new Chopper(bus.energy(on), bus.energy(off), 2 / (resistance * capacitance), 400, 300)
                    : Chopper.NONE;
            return new Random(courses, bus, chopper);
        }

        private static PowerCourse course(SplittableRandom random) {
            List<PowerCourse.Piece> pieces = new ArrayList<>();
            double start = 0;
            int count = random.nextInt(2, 6);
            for (int k = 0; k < count; k++) {
                double length = random.nextDouble(0.01, 0.15);
                // now and then as high a degree as the smoothest motion laws give
                double[] power = new double[random.nextInt(4) == 0 ? random.nextInt(6, 13) : random.nextInt(1, 6)];
                for (int n = 0; n < power.length; n++) {
                    power[n] = random.nextDouble(-8000, 9000) / Math.pow(length, n);
                }
                pieces.add(new PowerCourse.Piece(start, start + length, Polynomial.of(power)));
                start += length;
            }
            return new PowerCourse(pieces, start);
        }
    }

    @Test
    void agreesWithAdaptiveIntegration() {
        compare(200, 1);
    }

    @Test
    @Tag("slow")
    void agreesWithAdaptiveIntegrationOnAThousandGroups() {
        compare(1000, 10_001);
    }

    private static void compare(int groups, long firstSeed) {
        int choppers = 0;
        for (long seed = firstSeed; seed < firstSeed + groups; seed++) {
            Random random = Random.of(seed);
            Bus bus = random.bus();
            var stepped = new SteppedBus(random.courses(), bus, random.chopper());
            stepped.run();
            var start = new BusState(bus.floorEnergy(), false, 0);
            BusPower power = BusPower.once(random.courses());
            BusTrace trace = new BusSimulation(bus, random.chopper()).run(power, start);
            assertThat(bus.voltage(trace.peakEnergy()))
                    .as("peak voltage, seed %d", seed)
                    .isCloseTo(bus.voltage(stepped.peak), withPercentage(1e-4));
            assertThat(bus.voltage(trace.end().energy()))
                    .as("voltage at the end, seed %d", seed)
                    .isCloseTo(bus.voltage(stepped.energy()), withPercentage(1e-4));
            double scale = power.returned() + power.drawn() + 1;
            assertThat((trace.burned() - stepped.burned()) / scale)
                    .as("into the resistor, seed %d", seed)
                    .isBetween(-1e-6, 1e-6);
            assertThat((trace.supplied() - stepped.supplied()) / scale)
                    .as("from the rectifier, seed %d", seed)
                    .isBetween(-1e-6, 1e-6);
            assertThat(trace.switchings()).as("switchings, seed %d", seed).isEqualTo(stepped.switchings);
            choppers += stepped.switchings > 0 ? 1 : 0;
            compareSwitchings(random, stepped, seed);
            compareBreakpoints(random, stepped, seed);
        }
        assertThat(choppers).as("groups in which the chopper worked").isGreaterThan(groups / 4);
    }

    /**
     * The chopper switches at the same instants: between the two the energy of the bus changes by no more than a millionth of it, and where
     * it changes fast, by no more than a millionth of the course.
     */
    private static void compareSwitchings(Random random, SteppedBus stepped, long seed) {
        Bus bus = random.bus();
        BusPower power = BusPower.once(random.courses());
        var log = new BusLog(Integer.MAX_VALUE);
        new BusSimulation(bus, random.chopper()).run(power, new BusState(bus.floorEnergy(), false, 0), log);
        List<Double> instants = new ArrayList<>();
        boolean chopping = false;
        for (BusNode node : log.nodes()) {
            if (chopping != (node.mode() == BusMode.CHOPPING)) {
                instants.add(node.instant());
                chopping = !chopping;
            }
        }
        // a switching at the very end has no state after it to be written down
        assertThat(stepped.events.size() - instants.size())
                .as("switchings, seed %d", seed)
                .isBetween(0, 1);
        for (int k = 0; k < instants.size(); k++) {
            SteppedBus.Switching event = stepped.events.get(k);
            double shallow = 1e-6 * bus.floorEnergy() / Math.abs(event.rate());
            assertThat(instants.get(k))
                    .as("switching %d, seed %d", k, seed)
                    .isCloseTo(event.instant(), within(Math.max(shallow, 1e-6 * power.duration())));
        }
    }

    /** The same course broken off at each breakpoint: the voltages there agree too. */
    private static void compareBreakpoints(Random random, SteppedBus stepped, long seed) {
        Bus bus = random.bus();
        BusPower whole = BusPower.once(random.courses());
        int seen = 0;
        for (int k = 1; k <= whole.segments().size(); k++) {
            PowerSegment last = whole.segments().get(k - 1);
            boolean breakpoint =
                    k == whole.segments().size() || whole.segments().get(k).from() == 0;
            if (breakpoint) {
                BusPower part = new BusPower(whole.segments().subList(0, k), last.instant(last.to()));
                BusTrace trace =
                        new BusSimulation(bus, random.chopper()).run(part, new BusState(bus.floorEnergy(), false, 0));
                assertThat(bus.voltage(trace.end().energy()))
                        .as("voltage at breakpoint %d, seed %d", seen, seed)
                        .isCloseTo(bus.voltage(stepped.atBreakpoints.get(seen)), withPercentage(1e-4));
                seen++;
            }
        }
        assertThat(seen).isEqualTo(stepped.atBreakpoints.size());
    }

    @Test
    void energyBalanceCloses() {
        for (long seed = 1; seed <= 1000; seed++) {
            Random random = Random.of(seed);
            BusPower power = BusPower.once(random.courses());
            BusTrace trace = new BusSimulation(random.bus(), random.chopper())
                    .run(power, new BusState(random.bus().floorEnergy(), false, 0));
            double stored = trace.end().energy() - trace.start().energy();
            double gap = power.returned() - power.drawn() + trace.supplied() - trace.burned() - stored;
            assertThat(gap / (power.returned() + power.drawn() + trace.start().energy()))
                    .as("seed %d", seed)
                    .isBetween(-1e-9, 1e-9);
        }
    }

    /** Skipping alike switchings under constant power changes nothing: a course with a hair of slope cannot skip. */
    @Test
    void skippedSwitchingsCountAsIfTheyHadBeenFollowed() {
        Bus bus = Bus.of(1e-3, 650, 820);
        var chopper = new Chopper(bus.energy(780), bus.energy(765), 2 / (40 * 1e-3), 400, 30);
        var start = new BusState(bus.floorEnergy(), false, 0);
        BusTrace skipped = new BusSimulation(bus, chopper).run(BrakingFixtures.once(20, 5000), start);
        BusTrace followed = new BusSimulation(bus, chopper).run(BrakingFixtures.once(20, 5000, 1e-9), start);
        assertThat(skipped.switchings()).isGreaterThan(1000).isEqualTo(followed.switchings());
        assertThat(skipped.burned()).isCloseTo(followed.burned(), withPercentage(1e-6));
        assertThat(skipped.peakRise()).isCloseTo(followed.peakRise(), withPercentage(1e-6));
        assertThat(skipped.end().energy()).isCloseTo(followed.end().energy(), withPercentage(1e-3));
    }
}
