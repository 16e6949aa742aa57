package io.axiswright.engine.harmonic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.RectifierInput;
import io.axiswright.engine.design.CommonCoupling;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.EquipmentCurrentLimits;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Harmonic currents of the machine as equipment on a public low-voltage network. */
class EquipmentStudyTest {

    private static HarmonicResult study(double fault, double power, @Nullable Double choke, @Nullable Boolean asked) {
        List<String> lines = List.of("L1", "L2", "L3");
        return new HarmonicStudy()
                .study(new HarmonicRequest(
                        HarmonicStudyTest.mains(fault),
                        new CommonCoupling(null, null, asked),
                        lines,
                        List.of(new Rectifier(
                                "a",
                                lines,
                                new Voltage(400),
                                new Voltage(400),
                                new Current(30),
                                new RectifierInput(choke, null),
                                new Capacitance(1e-3),
                                new Power(power))),
                        List.of(),
                        List.of(new Current(0), new Current(0), new Current(0))));
    }

    /** Rows of the tables, and halfway between 120 and 250 (185) and in the first fifth of 33 to 66 (39.6) by hand. */
    @ParameterizedTest
    @CsvSource({
        "ANY, i3, 33, 0.216",
        "ANY, thc, 1000, 0.47",
        "BALANCED, i5, 10, 0.107",
        "BALANCED, thc, 185, 0.295",
        "BALANCED, i11, 39.6, 0.0348",
        "BALANCED_WITH_CHOKES, pwhc, 120, 0.46"
    })
    void limits(EquipmentCurrentLimits table, String quantity, double ratio, double limit) {
        assertThat(table.limit(quantity, ratio).orElseThrow()).isCloseTo(limit, within(1e-12));
    }

    /** Back from a limit to its ratio: 29.5 % of Table 3 lies halfway between 120 and 250. */
    @Test
    void ratios() {
        var table = EquipmentCurrentLimits.BALANCED;
        assertThat(table.ratioFor("thc", 0.295).orElseThrow()).isCloseTo(185, within(1e-9));
        assertThat(table.ratioFor("thc", 0.1).orElseThrow()).isEqualTo(33);
        assertThat(table.ratioFor("thc", 0.49)).isEmpty();
        assertThat(table.limit("i3", 33)).isEmpty();
    }

    @Test
    void nothingUnlessAskedFor() {
        assertThat(study(2000, 12_000, 0.04, null).equipment()).isNull();
    }

    /** 4 kW takes about 6 to 9 A, below what the standard holds for. */
    @Test
    void smallMachinesAreNotJudged() {
        HarmonicResult result = study(5000, 4000, 0.04, true);
        assertThat(result.equipment()).isNull();
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.HARMONIC_EQUIPMENT_NOT_JUDGED);
    }

    /** 12 kW take √3·400 V·I_1: 17.3 A without resistance, and the shares follow from the orders of the line. */
    @Test
    void aChokeNeedsAStrongerNetwork() {
        HarmonicResult result = study(800, 12_000, 0.04, true);
        EquipmentEmission equipment = Objects.requireNonNull(result.equipment());
        assertThat(equipment.table()).isEqualTo(EquipmentCurrentLimits.BALANCED_WITH_CHOKES);
        double reference = equipment.referenceCurrent().si();
        assertThat(reference).isBetween(17.3, 25.0);
        assertThat(equipment.ratio()).isCloseTo(800 / reference, within(1e-9));
        double squares = result.lines().getFirst().orders().stream()
                .filter(o -> o.order() <= 40)
                .mapToDouble(o -> o.current().si() * o.current().si())
                .sum();
        EmissionShare thc = equipment.shares().stream()
                .filter(s -> s.quantity().equals("thc"))
                .findFirst()
                .orElseThrow();
        assertThat(thc.share()).isCloseTo(Math.sqrt(squares) / reference, within(1e-9));
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.HARMONIC_EQUIPMENT_RATIO_LOW)
                .hasSize(1);
        double needed = Objects.requireNonNull(equipment.neededRatio());
        assertThat(needed).isBetween(33.0, 120.0).isGreaterThan(equipment.ratio());
    }

    /** Without any choke on a strong network the total passes 48 % of the reference current, whatever the ratio. */
    @Test
    void withoutChokesNoNetworkIsStrongEnough() {
        HarmonicResult result = study(20_000, 12_000, null, true);
        EquipmentEmission equipment = Objects.requireNonNull(result.equipment());
        assertThat(equipment.table()).isEqualTo(EquipmentCurrentLimits.BALANCED);
        assertThat(equipment.neededRatio()).isNull();
        assertThat(result.findings()).extracting(Finding::code).contains(FindingCode.HARMONIC_EQUIPMENT_TOO_HIGH);
    }
}
