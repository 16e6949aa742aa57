package io.axiswright.engine.supply;

import static io.axiswright.engine.supply.Plant.breaker;
import static io.axiswright.engine.supply.Plant.load;
import static io.axiswright.engine.supply.Plant.mains;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.catalogue.TrippingBand;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether protective devices hold when what they feed is switched on. Bands of IEC 60898-1: type C 5 to 10, D 10 to 20. */
class InrushTest {

    private static final CodeBasis IEC = CodeBasis.IEC_60204_1;
    private static final TrippingBand C = new TrippingBand(5, 10);
    private static final TrippingBand D = new TrippingBand(10, 20);

    private static SupplyLoad supply(String id, @Nullable Double peak) {
        var load = load(id, LoadUse.CONTROL_SUPPLY, Feed.THREE_PHASE, 400, 1.5, 1.5, 16, 8, 1e4, 0, null);
        return peak == null ? load : Copies.with(load, "inrushPeak", new Current(peak));
    }

    private static ProtectiveDevice device(String id, double rating, double price, @Nullable TrippingBand band) {
        var plain = Copies.with(breaker(IEC, 3, rating, 10000, price), "id", id);
        return Copies.with(plain, "instantaneousTripping", band);
    }

    private static SupplyResult size(List<SupplyLoad> loads, ProtectiveDevice... devices) {
        return new SupplySizing()
                .size(Plant.request(IEC, mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400), loads, List.of(devices)));
    }

    private static List<FindingCode> told(SupplyResult result) {
        return result.findings().stream()
                .map(Finding::code)
                .filter(code -> code == FindingCode.SUPPLY_INRUSH_TRIPS || code == FindingCode.SUPPLY_INRUSH_NOT_JUDGED)
                .toList();
    }

    /**
     * By hand: of type C, 6 A begins to trip at a peak of √2 · 5 · 6 = 42.4 A, 10 A at 70.7 A, 16 A at 113 A; of type D, 6 A at
     * 84.9 A and 10 A at 141 A. The smallest that holds is taken, whatever the others cost.
     */
    @ParameterizedTest
    @CsvSource({"42, C6, 42.426", "43, D6, 84.853", "84, D6, 84.853", "85, D10, 141.421"})
    void theSmallestDeviceThatHolds(double peak, String device, double tolerated) {
        var circuit = size(
                        List.of(supply("a", peak)),
                        device("C6", 6, 10, C),
                        device("D6", 6, 30, D),
                        device("C10", 10, 10, C),
                        device("D10", 10, 30, D))
                .circuits()
                .getFirst();

        assertThat(circuit.device()).isEqualTo(device);
        var inrush = Objects.requireNonNull(circuit.inrush());
        assertThat(inrush.peak().si()).isEqualTo(peak);
        assertThat(Objects.requireNonNull(inrush.tolerated()).si()).isCloseTo(tolerated, within(1e-3));
    }

    /** Of two that hold the cheaper one. */
    @Test
    void theCheaperOfTwoThatHold() {
        var result = size(List.of(supply("a", 40.0)), device("dear", 6, 30, D), device("cheap", 6, 10, C));

        assertThat(result.circuits().getFirst().device()).isEqualTo("cheap");
        assertThat(told(result)).isEmpty();
    }

    /** Peaks add up: 45 + 45 = 90 A at a circuit and its feeder of type C, 6 A, that hold 42.4 A. */
    @Test
    void peaksOfOneCircuitAddUp() {
        var result = size(List.of(supply("a", 45.0), supply("b", 45.0)), device("C6", 6, 10, C));

        assertThat(result.circuits())
                .singleElement()
                .satisfies(circuit -> assertThat(
                                Objects.requireNonNull(circuit.inrush()).peak().si())
                        .isEqualTo(90));
        assertThat(told(result)).containsExactly(FindingCode.SUPPLY_INRUSH_TRIPS, FindingCode.SUPPLY_INRUSH_TRIPS);
        assertThat(result.derivations())
                .filteredOn(d -> d.symbol().equals("i_tolerated"))
                .hasSize(2)
                .allSatisfy(d -> assertThat(d.result().si()).isCloseTo(42.426, within(1e-3)));
    }

    /**
     * By hand: 6 A of type C hold a peak of 42.4 A, so supplies of 30 A get a circuit each where no more than 6 A is allowed, and
     * share one of 10 A, 70.7 A, where that is; two of 20 A share one of 6 A; without bands nothing speaks against sharing.
     */
    @ParameterizedTest
    @CsvSource({"30, 6, true, 2, C6", "30, 16, true, 1, C10", "20, 6, true, 1, C6", "30, 6, false, 1, C6"})
    void whatHoldsApartIsNotPutTogetherWhereItTrips(
            double peak, double limit, boolean banded, int circuits, String device) {
        var band = banded ? C : null;
        var loads = List.of(
                Copies.with(supply("a", peak), "maxProtectiveDevice", new Current(limit)),
                Copies.with(supply("b", peak), "maxProtectiveDevice", new Current(limit)));
        var result = size(loads, device("C6", 6, 10, band), device("C10", 10, 12, band));

        assertThat(result.circuits())
                .hasSize(circuits)
                .extracting(BranchCircuit::device)
                .containsOnly(device);
    }

    /** Without a band nothing is claimed, and that is told for the circuit and the feeder. */
    @Test
    void withoutABandNothingIsClaimed() {
        var result = size(List.of(supply("a", 30.0)), device("plain", 6, 10, null));

        assertThat(Objects.requireNonNull(result.circuits().getFirst().inrush()).tolerated())
                .isNull();
        assertThat(told(result))
                .containsExactly(FindingCode.SUPPLY_INRUSH_NOT_JUDGED, FindingCode.SUPPLY_INRUSH_NOT_JUDGED);
    }

    @Test
    void loadsThatStateNoInrushAskForNothing() {
        var result = size(List.of(supply("a", null)), device("C6", 6, 10, C), device("D6", 6, 5, D));

        assertThat(result.circuits().getFirst().inrush()).isNull();
        assertThat(result.circuits().getFirst().device()).isEqualTo("D6");
        assertThat(told(result)).isEmpty();
    }

    /**
     * A transformer by hand: a one-phase load of 230 V, 3 A behind 400 V asks for 690 VA; the rating chosen draws 12 times its
     * primary current r.m.s., so a peak of √2 · 12 · S / 400 V.
     */
    @Test
    void aTransformerCountsByItsPeak() {
        var fan = load("fan", LoadUse.VENTILATION, Feed.ONE_PHASE, 230, 3, 3, 16, 1, 1e4, 0, null);
        var result = size(List.of(fan));

        double power = Objects.requireNonNull(result.transformers().getFirst().rating())
                .power()
                .si();
        assertThat(result.circuits())
                .filteredOn(circuit -> circuit.use() == LoadUse.TRANSFORMER)
                .singleElement()
                .satisfies(circuit -> assertThat(
                                Objects.requireNonNull(circuit.inrush()).peak().si())
                        .isCloseTo(Math.sqrt(2) * 12 * power / 400, within(1e-6)));
    }
}
