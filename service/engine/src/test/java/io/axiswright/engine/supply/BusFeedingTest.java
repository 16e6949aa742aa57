package io.axiswright.engine.supply;

import static io.axiswright.engine.supply.Plant.breakers;
import static io.axiswright.engine.supply.Plant.drive;
import static io.axiswright.engine.supply.Plant.load;
import static io.axiswright.engine.supply.Plant.mains;
import static io.axiswright.engine.supply.Plant.onBus;
import static io.axiswright.engine.supply.Plant.request;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What DC buses pass on, and the lines their rectifiers stand on. */
class BusFeedingTest {

    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;
    private static final double EXACT = 1e-9;

    private static SupplyResult size(SupplySystem system, SupplyLoad... loads) {
        return new SupplySizing()
                .size(request(IEC, mains(system, 400), List.of(loads), breakers(IEC, 6, 10, 16, 25, 32, 63)));
    }

    private static SupplyLoad threePhase(String id, double rated, double thermal) {
        return onBus(load(id, LoadUse.DRIVE, Feed.THREE_PHASE, 400, rated, thermal, 32, 8, 1e4, 0.001, null), "bus");
    }

    private static SupplyLoad dcFed(String id, double volts, double rated, double thermal) {
        return onBus(load(id, LoadUse.DRIVE, Feed.DC_BUS, volts, rated, thermal, 32, 8, 1e4, 0.002, null), "bus");
    }

    /**
     * By hand: 560 V and 2 A are 1120 W; at 400 V and a power factor of 0.7 that is 1120 / (sqrt(3) 400 0.7) = 2.3094 A. The bus
     * stands at sqrt(2) 400 = 565.69 V.
     */
    @Test
    void whatABusPassesOnIsDrawnByItsFeeder() {
        var result = size(SupplySystem.THREE_PHASE_THREE_WIRE, threePhase("feeder", 8, 5), dcFed("fed", 560, 2, 1));

        assertThat(result.unfed()).isEmpty();
        assertThat(result.circuits()).singleElement().satisfies(c -> {
            assertThat(c.loads()).containsExactly("feeder");
            assertThat(c.current().si()).isCloseTo(8 + 2.30940, within(1e-5));
            assertThat(c.leakageCurrent().si()).isCloseTo(0.003, within(EXACT));
        });
        assertThat(result.balance().lines())
                .allSatisfy(line -> assertThat(line.thermalCurrent().si()).isCloseTo(5 + 1.15470, within(1e-5)));
        assertThat(result.buses()).singleElement().satisfies(bus -> {
            assertThat(bus.voltage().si()).isCloseTo(565.685, within(1e-3));
            assertThat(bus.power().si()).isCloseTo(1120, within(EXACT));
            assertThat(bus.feeders()).containsExactly("feeder");
            assertThat(bus.loads()).containsExactly("fed");
        });
    }

    /** By hand: rated 6 A and 2 A carry 3/4 and 1/4 of 2.30940 A. */
    @Test
    void feedersShareByTheirRatings() {
        var result = size(
                SupplySystem.THREE_PHASE_THREE_WIRE,
                threePhase("large", 6, 1),
                threePhase("small", 2, 1),
                dcFed("fed", 560, 2, 1));

        assertThat(result.derivations())
                .filteredOn(d -> d.symbol().equals("I_bus"))
                .extracting(d -> d.subject() + " " + Math.round(1e4 * d.result().si()))
                .containsExactly("large 17321", "small 5774");
        assertThat(result.buses().getFirst().passedOn().si()).isCloseTo(2.30940, within(1e-5));
    }

    /** 230.94 V between line and neutral rectify to 326.6 V. */
    @Test
    void aBusOfAnotherVoltageFeedsNothing() {
        var onePhase = onBus(drive("feeder", Feed.ONE_PHASE, 230, 8, 32), "bus");
        var result = size(
                SupplySystem.THREE_PHASE_FOUR_WIRE,
                onePhase,
                dcFed("fed-1", 560, 2, 1),
                dcFed("fed-2", 560, 2, 1),
                dcFed("right", 325, 2, 1));

        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_BUS_VOLTAGE_MISFIT)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.text()).contains("560 V", "326.6", "fed-1, fed-2");
                    assertThat(f.pointer()).isEqualTo("/design/axes/fed-1");
                });
        assertThat(result.unfed()).containsExactly("fed-1", "fed-2");
        assertThat(result.buses().getFirst().loads()).containsExactly("right");
    }

    /** By hand: 7 A of its own and 1120 / (sqrt(3) 400 0.7) = 2.31 A passed on, over the cycle, through a rectifier for 8 A. */
    @Test
    void aFeederMustBearWhatItPassesOn() {
        assertThat(size(SupplySystem.THREE_PHASE_THREE_WIRE, threePhase("f", 8, 7), dcFed("d", 560, 2, 2))
                        .findings())
                .filteredOn(f -> f.code() == FindingCode.SUPPLY_BUS_FEED_OVERLOADED)
                .extracting(Finding::pointer)
                .containsExactly("/design/axes/f");
        assertThat(size(SupplySystem.THREE_PHASE_THREE_WIRE, threePhase("f", 8, 5), dcFed("d", 560, 2, 2))
                        .findings())
                .extracting(Finding::code)
                .doesNotContain(FindingCode.SUPPLY_BUS_FEED_OVERLOADED);
    }

    /** A bus whose rectifiers are not on the mains themselves feeds nothing. */
    @Test
    void aBusWithoutMainsIsNotCounted() {
        var phaseless = onBus(drive("feeder", Feed.THREE_PHASE, 400, 8, 32), "bus");
        var result = size(SupplySystem.ONE_PHASE_TWO_WIRE, phaseless, dcFed("fed", 560, 2, 1));

        assertThat(result.unfed()).containsExactly("fed", "feeder");
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.SUPPLY_DC_FED_LOAD);
    }

    /** More on a bus never asks for less. */
    @Test
    void moreOnABusNeverDrawsLess() {
        double before = 0;
        for (double amperes = 0.5; amperes < 6; amperes += 0.5) {
            var result =
                    size(SupplySystem.THREE_PHASE_THREE_WIRE, threePhase("f", 8, 5), dcFed("d", 560, amperes, amperes));
            assertThat(result.feeder().designCurrent().si()).isGreaterThan(before);
            before = result.feeder().designCurrent().si();
        }
    }

    /**
     * Rectifiers of one bus on one set of lines, whatever else is to be placed; and no placing that respects that has a lighter
     * heaviest line, by complete enumeration of the blocks.
     */
    @Test
    void circuitsOfOneBusKeepToTheSameLines() {
        for (int seed = 0; seed < 100; seed++) {
            var random = new SplittableRandom(seed);
            var loads = new ArrayList<SupplyLoad>();
            for (int k = random.nextInt(2, 9); k > 0; k--) {
                double amperes = random.nextInt(1, 40) / 4.0;
                var load = load(
                        "d" + k, LoadUse.DRIVE, Feed.ONE_PHASE, 230, amperes, amperes, 32, 1, 1e4, 0, "zone" + k % 2);
                loads.add(random.nextInt(3) == 0 ? load : onBus(load, "bus" + random.nextInt(3)));
            }

            var result = size(SupplySystem.THREE_PHASE_FOUR_WIRE, loads.toArray(SupplyLoad[]::new));

            var blocks = new ArrayList<Double>();
            loads.stream().filter(l -> l.busGroup() == null).forEach(l -> blocks.add(l.rated()));
            for (int b = 0; b < 3; b++) {
                String bus = "bus" + b;
                var members =
                        loads.stream().filter(l -> bus.equals(l.busGroup())).toList();
                if (!members.isEmpty()) {
                    blocks.add(DesignCurrents.sum(members));
                    assertThat(result.circuits())
                            .as("seed %d", seed)
                            .filteredOn(c ->
                                    members.stream().anyMatch(l -> c.loads().contains(l.id())))
                            .extracting(BranchCircuit::lines)
                            .containsOnly(linesOf(result, members.getFirst().id()));
                }
            }
            assertThat(result.balance().heaviest().si())
                    .as("seed %d", seed)
                    .isCloseTo(lightestHeaviest(blocks, 0, new double[3]), within(1e-6));
        }
    }

    private static List<String> linesOf(SupplyResult result, String load) {
        return result.circuits().stream()
                .filter(c -> c.loads().contains(load))
                .findFirst()
                .orElseThrow()
                .lines();
    }

    private static double lightestHeaviest(List<Double> blocks, int k, double[] line) {
        if (k == blocks.size()) {
            return Arrays.stream(line).max().orElseThrow();
        }
        return IntStream.range(0, 3)
                .mapToDouble(l -> {
                    var next = line.clone();
                    next[l] += blocks.get(k);
                    return lightestHeaviest(blocks, k + 1, next);
                })
                .min()
                .orElseThrow();
    }

    /** A circuit of two buses ties both of them together. */
    @Test
    void aCircuitOfTwoBusesTiesThemTogether() {
        var loads = List.of(
                onBus(load("a1", LoadUse.DRIVE, Feed.ONE_PHASE, 230, 9, 9, 32, 1, 1e4, 0, null), "a"),
                onBus(load("b1", LoadUse.DRIVE, Feed.ONE_PHASE, 230, 8, 8, 32, 1, 1e4, 0, null), "b"),
                onBus(load("a2", LoadUse.DRIVE, Feed.ONE_PHASE, 230, 2, 2, 32, 2, 1e4, 0, null), "a"),
                onBus(load("b2", LoadUse.DRIVE, Feed.ONE_PHASE, 230, 1, 1, 32, 2, 1e4, 0, null), "b"));

        var result = size(SupplySystem.THREE_PHASE_FOUR_WIRE, loads.toArray(SupplyLoad[]::new));

        assertThat(result.circuits()).extracting(BranchCircuit::loads).contains(List.of("a2", "b2"));
        assertThat(result.circuits()).extracting(BranchCircuit::lines).containsOnly(List.of("L1"));
    }
}
