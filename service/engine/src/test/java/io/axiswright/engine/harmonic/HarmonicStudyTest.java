package io.axiswright.engine.harmonic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.RectifierInput;
import io.axiswright.engine.design.CommonCoupling;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.CurrentDistortionLimits;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Harmonic currents at the point of common coupling. */
class HarmonicStudyTest {

    private static final List<String> LINES = List.of("L1", "L2", "L3");

    private static Rectifier rectifier(
            String axis, List<String> lines, double voltage, double power, @Nullable Double line) {
        return new Rectifier(
                axis,
                lines,
                new Voltage(voltage),
                new Voltage(voltage),
                new Current(10),
                new RectifierInput(line, null),
                new Capacitance(400e-6),
                new Power(power));
    }

    /** Three-phase mains of 400 V with a neutral and a fault current in A. */
    static Mains mains(double fault) {
        return new Mains(
                SupplySystem.THREE_PHASE_FOUR_WIRE, new Voltage(400), 0.1, 0.1, new Frequency(50), new Current(fault));
    }

    private static HarmonicResult study(double fault, @Nullable Double demand, double others, Rectifier... rectifiers) {
        return new HarmonicStudy()
                .study(new HarmonicRequest(
                        mains(fault),
                        new CommonCoupling(null, demand == null ? null : new Current(demand), null),
                        LINES,
                        List.of(rectifiers),
                        List.of(),
                        IntStream.range(0, 3).mapToObj(k -> new Current(others)).toList()));
    }

    private static HarmonicOrder order(HarmonicResult result, int line, int order) {
        return result.lines().get(line).orders().stream()
                .filter(o -> o.order() == order)
                .findFirst()
                .orElseThrow();
    }

    /** The rows of IEEE 519 Table 2 at their ends. */
    @ParameterizedTest
    @CsvSource({
        "19.9, 5, 0.04, 0.05",
        "20, 5, 0.07, 0.08",
        "49, 11, 0.035, 0.08",
        "50, 17, 0.04, 0.12",
        "999, 23, 0.02, 0.15",
        "1000, 35, 0.014, 0.20"
    })
    void limits(double ratio, int order, double limit, double total) {
        var limits = CurrentDistortionLimits.at(ratio);
        assertThat(limits.order(order).value().si()).isCloseTo(limit, within(1e-12));
        assertThat(limits.total().value().si()).isCloseTo(total, within(1e-12));
    }

    /** In every line the same; no triples; the voltage of an order is h·X·I, X = 230.94 V/5000 A/√1.01. */
    @Test
    void threePhasesAlone() {
        HarmonicResult result = study(5000, null, 0, rectifier("a", LINES, 400, 4000, null));
        for (int h : new int[] {5, 7, 11, 13}) {
            double first = order(result, 0, h).current().si();
            assertThat(order(result, 1, h).current().si()).isCloseTo(first, within(1e-9 * first));
            assertThat(order(result, 2, h).current().si()).isCloseTo(first, within(1e-9 * first));
            assertThat(order(result, 0, h).voltageShare()).isCloseTo(h * first / 5000 / Math.sqrt(1.01), within(1e-9));
        }
        assertThat(order(result, 0, 3).current().si()).isLessThan(1e-9);
        RectifierGroup group = result.groups().getFirst();
        // without chokes 70 to 100 % and more, and a power factor near 0.7: common practice, from memory
        assertThat(group.distortion()).isBetween(0.7, 1.6);
        assertThat(group.powerFactor()).isBetween(0.5, 0.8);
        assertThat(result.demandCurrent()).isEqualTo(result.lines().getFirst().fundamental());
        assertThat(result.findings())
                .extracting(Finding::code)
                .contains(FindingCode.HARMONIC_ORDER_HIGH, FindingCode.HARMONIC_DEMAND_DISTORTION_HIGH);
    }

    /** Two like drives are one of twice the size, and feel the mains twice. */
    @Test
    void likeRectifiersAreOne() {
        HarmonicResult two =
                study(5000, 100.0, 0, rectifier("a", LINES, 400, 4000, 0.03), rectifier("b", LINES, 400, 4000, 0.03));
        HarmonicResult alone = study(2500, 100.0, 0, rectifier("a", LINES, 400, 4000, 0.03));
        assertThat(two.groups())
                .singleElement()
                .satisfies(g -> assertThat(g.axes()).containsExactly("a", "b"));
        for (int h : new int[] {5, 7, 11, 13, 17, 19}) {
            assertThat(order(two, 0, h).current().si())
                    .isCloseTo(2 * order(alone, 0, h).current().si(), within(1e-6));
        }
    }

    /** A choke of 3 % takes it to about 35 to 50 % at rated power: common practice, from memory. */
    @Test
    void chokesHelp() {
        HarmonicResult choke = study(20_000, null, 0, rectifier("a", LINES, 400, 6500, 0.03));
        assertThat(choke.groups().getFirst().distortion()).isBetween(0.33, 0.55);
    }

    /** Three like loads from line to neutral: their triples have one phase and add up in the neutral, not their fifths. */
    @Test
    void onePhaseLoadsOnThreeLines() {
        Rectifier[] loads = LINES.stream()
                .map(line -> rectifier(line, List.of(line), 230, 800, null))
                .toArray(Rectifier[]::new);
        HarmonicResult result = study(5000, null, 0, loads);
        double alone = order(study(5000, null, 0, loads[0]), 0, 3).current().si();
        for (int line = 0; line < 3; line++) {
            assertThat(order(result, line, 3).current().si()).isCloseTo(alone, within(1e-9 * alone));
        }
        // between two lines it goes forth in one and back in the other
        HarmonicResult across = study(5000, null, 0, rectifier("a", List.of("L1", "L3"), 400, 800, null));
        assertThat(order(across, 0, 5).current().si())
                .isCloseTo(order(across, 2, 5).current().si(), within(1e-9));
        assertThat(order(across, 1, 5).current().si()).isZero();
    }

    /** Loads between all pairs of lines: their triples cancel in every line, as their phases are thirds of a turn apart. */
    @Test
    void triplesCancelBetweenLines() {
        Rectifier[] loads = Arrays.stream(new String[][] {{"L1", "L2"}, {"L2", "L3"}, {"L1", "L3"}})
                .map(pair -> rectifier(pair[0] + pair[1], List.of(pair), 400, 800, null))
                .toArray(Rectifier[]::new);
        HarmonicResult result = study(5000, null, 0, loads);
        assertThat(order(result, 0, 3).current().si()).isLessThan(1e-6);
        assertThat(order(result, 0, 9).current().si()).isLessThan(1e-6);
        assertThat(order(result, 0, 5).current().si()).isGreaterThan(0.1);
    }

    /** Behind the same point as large linear loads the same currents are within the limits. */
    @Test
    void demandOfOthersCounts() {
        HarmonicResult result = study(20_000, 400.0, 2, rectifier("a", LINES, 400, 4000, 0.03));
        assertThat(result.ratio()).isCloseTo(50, within(1e-9));
        assertThat(result.demandLimit()).isCloseTo(0.12, within(1e-12));
        assertThat(result.findings()).extracting(Finding::code).containsExactly(FindingCode.HARMONIC_OTHERS_AS_SINES);
    }

    @Test
    void aWeakSupplyIsDistorted() {
        HarmonicResult result = study(60, null, 0, rectifier("a", LINES, 400, 5000, null));
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.HARMONIC_VOLTAGE_DISTORTION_HIGH)
                .singleElement()
                .satisfies(
                        f -> assertThat(Objects.requireNonNull(f.value()).si()).isGreaterThan(0.08));
    }

    @Test
    void aVeryWeakSupplyIsNotWorkedOut() {
        HarmonicResult result = study(5, null, 0, rectifier("a", LINES, 400, 3000, null));
        assertThat(result.lines()).isEmpty();
        assertThat(result.findings()).extracting(Finding::code).containsExactly(FindingCode.HARMONIC_NETWORK_WEAK);
    }
}
