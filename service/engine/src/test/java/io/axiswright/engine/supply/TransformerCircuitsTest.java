package io.axiswright.engine.supply;

import static io.axiswright.engine.supply.Plant.drive;
import static io.axiswright.engine.supply.Plant.load;
import static io.axiswright.engine.supply.Plant.mains;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.design.Transformers;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.supply.checker.PanelChecker;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Circuits behind transformers. */
class TransformerCircuitsTest {

    private static final CodeBasis NA = CodeBasis.NFPA_79;
    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;

    private static Installation installation(@Nullable Double impedance, @Nullable Double resistive) {
        var transformers = new Transformers(List.of(), null, null, resistive, 0.02, null);
        return Copies.with(
                Copies.with(Plant.INSTALLATION, "transformerImpedance", impedance), "transformers", transformers);
    }

    private static SupplyResult size(
            CodeBasis basis, double volts, Installation installation, Set<String> wished, SupplyLoad... loads) {
        return new SupplySizing()
                .size(new SupplyRequest(
                        basis,
                        mains(SupplySystem.THREE_PHASE_THREE_WIRE, volts),
                        installation,
                        List.of(loads),
                        Plant.breakers(basis, 6, 10, 16, 20, 25, 32, 40, 63, 100),
                        wished));
    }

    private static List<FindingCode> codes(SupplyResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    private static BranchCircuit circuit(SupplyResult result, String id) {
        return result.circuits().stream()
                .filter(c -> c.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static SupplyLoad leaking(String id, double amperes, double thermal) {
        return load(id, LoadUse.DRIVE, Feed.ONE_PHASE, 230, amperes, thermal, 32, 1, 1e4, 0.005, null);
    }

    /**
     * IEC by hand: 20 A and 10 A at 230 V behind 400 V, heating 20 A: 4.6 kVA, so 5 kVA of 21.739 A. Primary 20 A 230/400 =
     * 11.5 A, device 16 A. Secondary: 20 A with a device of 20 A at most; circuits of 20 A and 10 A. 5 kA of the mains become
     * 5000 A 1.739 = 8695.65 A at most; u_k = 4 % passes on 21.739 A (1 + 0.6 0.04) / 0.95 / 0.04 = 585.81 A. Fall: n = 0.92,
     * u_X = sqrt(0.04² - 0.03²) = 0.026458: 0.92 0.03 + (0.92 0.026458)² / 2 = 0.027896.
     */
    @Test
    void aPanelBehindATransformerByHand() {
        var result =
                size(IEC, 400, installation(0.04, 0.03), Set.of("a", "b"), leaking("a", 20, 8), leaking("b", 10, 6));
        var need = result.transformers().getFirst();
        var primary = circuit(result, Objects.requireNonNull(need.primaryCircuit()));
        var feeder = Objects.requireNonNull(need.feeder());

        assertThat(need.id()).isEqualTo("T1");
        assertThat(need.system()).isEqualTo(SupplySystem.ONE_PHASE_TWO_WIRE);
        assertThat(need.earthing()).isEqualTo(SystemEarthing.TN);
        assertThat(need.faultCurrent().si()).isCloseTo(585.81, within(0.01));
        assertThat(Objects.requireNonNull(need.regulation())).isCloseTo(0.027896, within(1e-6));
        // 2 % of 5 kVA without load; 3 % by a current of 8 A + 6 A over 21.739 A, squared: 100 W + 62.21 W
        assertThat(Objects.requireNonNull(need.loss()).si()).isCloseTo(162.21, within(0.01));
        assertThat(primary.connection()).isEqualTo(Connection.LINE_TO_LINE);
        assertThat(primary.designCurrent().si()).isCloseTo(11.5, within(1e-9));
        assertThat(Objects.requireNonNull(primary.deviceRating()).si()).isEqualTo(16);
        assertThat(primary.conductors()).isEqualTo(3);
        assertThat(result.feeder().current().si()).isCloseTo(11.5, within(1e-9));
        assertThat(result.feeder().leakageCurrent().si()).isZero();
        assertThat(feeder.designCurrent().si()).isEqualTo(20);
        assertThat(Objects.requireNonNull(feeder.deviceRating()).si()).isEqualTo(20);
        assertThat(feeder.poles()).isEqualTo(2);
        assertThat(feeder.length().si()).isZero();
        assertThat(feeder.leakageCurrent().si()).isCloseTo(0.01, within(1e-12));
        assertThat(circuit(result, "T1/C1").loads()).containsExactly("a");
        assertThat(circuit(result, "T1/C2").loads()).containsExactly("b");
        assertThat(circuit(result, "T1/C2").voltage().si()).isEqualTo(230);
        assertThat(result.unfed()).isEmpty();
        assertThat(codes(result))
                .contains(FindingCode.SUPPLY_TRANSFORMER_NEEDED)
                .doesNotContain(FindingCode.SUPPLY_VOLTAGE_MISFIT, FindingCode.SUPPLY_TRANSFORMER_DATA_MISSING);
    }

    /** 8695.65 A pass where nothing is known of the transformer itself; North America has no K_T: 21.739 A / 0.04 at 5 kVA. */
    @Test
    void whatIsNotKnownOfATransformerIsTakenAtItsWorst() {
        var unknown = size(IEC, 400, Plant.INSTALLATION, Set.of(), leaking("a", 20, 8));
        assertThat(unknown.transformers().getFirst().faultCurrent().si()).isCloseTo(8695.65, within(0.01));
        assertThat(unknown.transformers().getFirst().regulation()).isNull();
        assertThat(codes(unknown))
                .contains(FindingCode.SUPPLY_VOLTAGE_MISFIT)
                .doesNotContain(
                        FindingCode.SUPPLY_TRANSFORMER_NEEDED,
                        FindingCode.SUPPLY_TRANSFORMER_DATA_MISSING,
                        FindingCode.SUPPLY_DEVICE_MISSING);
        assertThat(codes(size(IEC, 400, Plant.INSTALLATION, Set.of("a"), leaking("a", 20, 8))))
                .contains(FindingCode.SUPPLY_TRANSFORMER_DATA_MISSING);

        var north = size(NA, 480, installation(0.05, null), Set.of(), drive("d", Feed.ONE_PHASE, 240, 16, 30));
        var need = north.transformers().getFirst();
        double rated = Objects.requireNonNull(need.rating()).secondaryCurrent().si();
        assertThat(need.faultCurrent().si()).isCloseTo(rated / 0.05, within(1e-9));
    }

    /** A drive for the voltage of the mains goes behind a transformer where the design says so, and only then. */
    @Test
    void aDesignDecides() {
        var drive = drive("d", Feed.THREE_PHASE, 400, 10, 32);
        var straight = size(IEC, 400, installation(0.04, 0.02), Set.of(), drive);
        assertThat(straight.transformers()).isEmpty();
        var behind = size(IEC, 400, installation(0.04, 0.02), Set.of("d"), drive);
        assertThat(behind.transformers()).hasSize(1);
        assertThat(circuit(behind, "T1/C1").loads()).containsExactly("d");
        assertThat(circuit(behind, "C1").loads()).containsExactly("T1");
        assertThat(circuit(behind, "C1").current().si()).isCloseTo(10, within(1e-9));
    }

    @Test
    void beyondTheStandardRatingsTheLoadsStayUnfed() {
        var result =
                size(NA, 480, installation(0.04, 0.02), Set.of("d"), drive("d", Feed.THREE_PHASE, 208, 3000, 5000));
        assertThat(result.circuits()).isEmpty();
        assertThat(result.unfed()).containsExactly("d");
        assertThat(codes(result)).contains(FindingCode.SUPPLY_TRANSFORMER_NONE);
    }

    /** A load may be called like a transformer. */
    @Test
    void namesDoNotMeet() {
        var result = size(IEC, 400, installation(null, null), Set.of("T1"), leaking("T1", 10, 5));
        assertThat(result.transformers().getFirst().id()).isEqualTo("transformer T1");
    }

    /**
     * What a bus behind a transformer passes on comes through the transformer: 5 A at 325 V are 1625 W, of a one-phase rectifier
     * 1625 / (230 0.6) = 11.775 A beside the 10 A of its own.
     */
    @Test
    void aBusBehindATransformerDrawsThroughIt() {
        var feeding = Plant.onBus(leaking("a", 10, 10), "bus");
        var fed = Plant.onBus(load("b", LoadUse.DRIVE, Feed.DC_BUS, 325, 5, 5, 32, 1, 1e4, 0, null), "bus");
        var result = size(IEC, 400, installation(null, null), Set.of(), feeding, fed);
        assertThat(result.buses()).hasSize(1);
        assertThat(result.unfed()).isEmpty();
        assertThat(circuit(result, "T1/C1").current().si()).isCloseTo(10 + 1625 / 138.0, within(1e-9));
        assertThat(result.feeder().current().si()).isCloseTo((10 + 1625 / 138.0) * 230 / 400, within(1e-9));
    }

    /** A second reading of 400 generated supplies. */
    @Test
    void everyAnswerHolds() {
        for (int seed = 0; seed < 400; seed++) {
            var random = new SplittableRandom(seed);
            var basis = CodeBasis.values()[random.nextInt(2)];
            var loads = new ArrayList<SupplyLoad>();
            double[] volts = {400, 230, 208, 120, 480};
            for (int k = random.nextInt(1, 14); k > 0; k--) {
                double amperes = random.nextInt(2, 60) / 4.0;
                loads.add(load(
                        "load" + k,
                        LoadUse.values()[random.nextInt(3)],
                        random.nextBoolean() ? Feed.ONE_PHASE : Feed.THREE_PHASE,
                        volts[random.nextInt(volts.length)],
                        amperes,
                        amperes * random.nextInt(1, 5) / 4,
                        random.nextInt(20, 60),
                        random.nextInt(1, 5),
                        1e4,
                        0.001 * random.nextInt(4),
                        random.nextInt(3) == 0 ? "zone" : null));
            }
            var request = new SupplyRequest(
                    basis,
                    mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400),
                    installation(random.nextBoolean() ? null : 0.04, null),
                    loads,
                    Plant.breakers(basis, 2, 4, 6, 10, 16, 20, 25, 32, 40, 63, 100, 160, 250),
                    random.nextBoolean() ? Set.of("load1", "load2") : Set.of());
            PanelChecker.check("seed " + seed, request, new SupplySizing().size(request));
        }
    }

    @Test
    void moreBehindATransformerNeverTakesLessFromTheMains() {
        for (var basis : CodeBasis.values()) {
            double before = 0;
            for (double amperes = 1; amperes < 100; amperes *= 1.3) {
                var result = size(
                        basis,
                        480,
                        installation(0.04, null),
                        Set.of(),
                        drive("d", Feed.THREE_PHASE, 208, amperes, 500));
                assertThat(result.feeder().designCurrent().si()).isGreaterThan(before);
                before = result.feeder().designCurrent().si();
            }
        }
    }
}
