package io.axiswright.engine.fault;

import static io.axiswright.engine.fault.Sites.breaker;
import static io.axiswright.engine.fault.Sites.drive;
import static io.axiswright.engine.fault.Sites.feeder;
import static io.axiswright.engine.fault.Sites.iec;
import static io.axiswright.engine.fault.Sites.northAmerican;
import static io.axiswright.engine.fault.Sites.plain;
import static io.axiswright.engine.fault.Sites.quick;
import static io.axiswright.engine.fault.Sites.stated;
import static io.axiswright.engine.fault.Sites.unrated;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Connection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class FaultStudyTest {

    /**
     * 400 V, 10 kA with R/X = 0.5: Z_Q = 1.1 · 230.94 / 10 000 = 25.403 mohm = 11.361 + j22.721. 20 m of 6 mm² class 5 cold add
     * 66.0 + j1.6: |77.361 + j24.321| = 81.094 mohm, so 254.03 V / 81.094 mohm = 3132.6 A. Lowest: 6 kA, 0.9 · 230.94 V =
     * 207.85 V, Z_Q = 34.641 mohm = 15.492 + j30.984; loop 0.2 ohm = 89.443 + j178.885; hot 2 · (66 · 1.1965 + j1.6) =
     * 157.938 + j3.2: |247.381 + j182.085| = 307.17 mohm, 676.65 A.
     */
    @Test
    void aBranchByHand() {
        var result = study(stated(0.2), feeder(null, 0, quick(63, 90_000)), three("6 mm2", quick(16, 40_000), 20));
        var point = result.points().getLast();
        assertThat(point.id()).isEqualTo("axis");
        assertThat(si(point.maximum().threePhase())).isCloseTo(3132.6, within(0.5));
        assertThat(si(point.maximum().lineToLine())).isCloseTo(3132.6 * Math.sqrt(3) / 2, within(0.5));
        assertThat(si(point.minimum().lineToEarth())).isCloseTo(676.65, within(0.1));
        assertThat(point.minimum().lineToNeutral()).isNull();

        var circuit = result.circuits().getLast();
        assertThat(si(circuit.loopImpedance())).isCloseTo(0.30717, within(1e-5));
        // 16 A trips at 160 A: 207.85 V / 160 A
        assertThat(si(circuit.loopImpedanceLimit())).isCloseTo(1.2990, within(1e-4));
        assertThat(si(circuit.disconnectionTime())).isEqualTo(0.4);
        assertThat(si(circuit.clearingTime())).isEqualTo(0.01);
        assertThat(si(circuit.letThrough())).isEqualTo(40_000);
        // (115 · 6)² A²s
        assertThat(si(circuit.withstand())).isCloseTo(476_100, within(1e-3));
        assertThat(si(circuit.lowestFault())).isCloseTo(676.65, within(0.1));
        assertThat(codes(result)).containsExactly(FindingCode.FAULT_CURRENTS_CALCULATED);
        assertThat(result.derivations()).extracting(d -> d.symbol()).contains("Z_Q", "I_k,max", "I_k1,min");
    }

    @Test
    void aDistributionCircuitAndALargeOneHaveFiveSeconds() {
        var result =
                study(stated(0.2), feeder("25 mm2", 10, quick(63, 90_000)), three("16 mm2", quick(40, 60_000), 20));
        assertThat(result.circuits())
                .allSatisfy(c -> assertThat(si(c.disconnectionTime())).isEqualTo(5));
    }

    @Test
    void aDeviceMustClearWhatFlowsAtItsPlace() {
        // 30 m of feeder bring 10 kA below 6 kA: the feeder's device must clear the former, the branch's the latter
        var result = study(stated(0.2), feeder("10 mm2", 30, breaker(32, 6000)), three("6 mm2", breaker(16, 6000), 5));
        var finding = finding(result, FindingCode.FAULT_INTERRUPTING_RATING_LOW);
        assertThat(finding.subject()).isEqualTo("feeder");
        assertThat(finding.text()).contains("10000 A", "6000 A");
    }

    @Test
    void aLoadMustBearWhatFlowsAtItsTerminals() {
        var near = Sites.branch(
                "C1",
                Connection.THREE_PHASE,
                "6 mm2",
                breaker(16, 10_000),
                drive("near", 1, 5000),
                drive("far", 20, 5000));
        var result = study(stated(0.2), feeder(null, 0, breaker(63, 10_000)), near);
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.FAULT_LOAD_RATING_LOW)
                .extracting(Finding::subject)
                .containsExactly("near");
    }

    @Test
    void theWeakestLinkRatesTheMachine() {
        var branch = Sites.branch(
                "C1",
                Connection.THREE_PHASE,
                "6 mm2",
                breaker(16, 14_000),
                drive("axis", 20, 5000),
                unrated("supply", 1));
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 480, 10_000, null, null, null, null);
        var result = new FaultStudy()
                .study(northAmerican(mains, feeder("6 AWG", 3, breaker(60, 14_000)), inGauge(branch, "10 AWG")));
        assertThat(si(result.shortCircuitRating())).isEqualTo(5000);
        assertThat(result.weakestLink()).isEqualTo("axis");
        assertThat(result.unrated()).containsExactly("supply");
        // the fault at its terminals it would bear; the nameplate counts at the supply terminals
        assertThat(codes(result))
                .contains(FindingCode.FAULT_MACHINE_RATING_LOW, FindingCode.FAULT_RATING_UNSTATED)
                .doesNotContain(FindingCode.FAULT_LOAD_RATING_LOW);
        assertThat(codes(study(
                        stated(0.2), feeder(null, 0, breaker(63, 10_000)), three("6 mm2", breaker(16, 10_000), 20))))
                .doesNotContain(FindingCode.FAULT_MACHINE_RATING_LOW);
    }

    /**
     * 480 V, 10 kA, nominal voltage, R/X = 0.1 as nothing is stated: Z_Q = 27.713 mohm = 2.758 + j27.575. 100 ft (30.48 m) of 10
     * AWG in plastic: 1.2 + j0.05 ohm per 1000 ft at 75 °C, 1.2 / 1.21615 cold, so 98.672 + j5 mohm: |101.430 + j32.575| =
     * 106.533 mohm, 277.128 V / 106.533 mohm = 2601.3 A.
     */
    @Test
    void northAmericanConductorsByHand() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 480, 10_000, null, null, null, null);
        var branch =
                Sites.branch("C1", Connection.THREE_PHASE, "10 AWG", breaker(20, 14_000), drive("axis", 30.48, 10_000));
        var result = new FaultStudy().study(northAmerican(mains, feeder(null, 0, breaker(60, 14_000)), branch));
        assertThat(si(result.points().getLast().maximum().threePhase())).isCloseTo(2601.3, within(0.5));
        assertThat(result.circuits().getLast().disconnectionTime()).isNull();
    }

    @Test
    void anEarthFaultMustBeDisconnectedInTime() {
        // 60 m of 1.5 mm²: 2 · 60 · 13.3 · 1.1965 = 1.91 ohm and more, 16 A trip at 160 A only below 1.30 ohm
        var result = study(stated(0.2), feeder(null, 0, quick(63, 9_000)), three("1.5 mm2", quick(16, 20_000), 60));
        var finding = finding(result, FindingCode.FAULT_DISCONNECTION_SLOW);
        assertThat(finding.subject()).isEqualTo("C1 (0.4 s)");
        assertThat(finding.text()).contains("2.0", "1.299");
    }

    @Test
    void whatIsTooSlowWithoutTheSupplyIsTooSlow() {
        var result = study(plain(), feeder(null, 0, quick(63, 9_000)), three("1.5 mm2", quick(16, 20_000), 60));
        assertThat(codes(result))
                .contains(FindingCode.FAULT_DISCONNECTION_SLOW, FindingCode.FAULT_SUPPLY_ASSUMED)
                .contains(FindingCode.FAULT_EARTH_LOOP_UNKNOWN); // of the feeder, which may do
    }

    @Test
    void saysWhatDisconnectionCouldNotBeExaminedFor() {
        assertThat(codes(study(
                        stated(0.2), feeder(null, 0, breaker(63, 10_000)), three("6 mm2", breaker(16, 10_000), 5))))
                .contains(FindingCode.FAULT_DEVICE_TIMES_UNKNOWN);
        assertThat(codes(study(plain(), feeder(null, 0, quick(63, 90_000)), three("6 mm2", quick(16, 40_000), 5))))
                .contains(FindingCode.FAULT_EARTH_LOOP_UNKNOWN);
    }

    @Test
    void inTtOvercurrentDevicesRarelyDo() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400, 10_000, 6000.0, 0.5, SystemEarthing.TT, 20.0);
        var result = study(mains, feeder(null, 0, quick(63, 90_000)), three("6 mm2", quick(16, 40_000), 20));
        assertThat(codes(result)).contains(FindingCode.FAULT_RESIDUAL_DEVICE_NEEDED);
        assertThat(si(result.circuits().getLast().disconnectionTime())).isEqualTo(0.2);
        // 207.85 V over a little more than 20 ohm
        assertThat(si(result.points().getLast().minimum().lineToEarth())).isBetween(10.2, 10.4);
    }

    @Test
    void inItAFirstFaultStays() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_THREE_WIRE, 400, 10_000, 6000.0, 0.5, SystemEarthing.IT, null);
        var result = study(mains, feeder(null, 0, quick(63, 90_000)), three("6 mm2", quick(16, 40_000), 20));
        assertThat(codes(result)).contains(FindingCode.FAULT_FIRST_FAULT_STAYS);
        assertThat(result.points().getLast().maximum().lineToEarth()).isNull();
        assertThat(result.points().getFirst().maximum().lineToNeutral()).isNull();
        assertThat(result.circuits().getLast().disconnectionTime()).isNull();
    }

    /**
     * 2500 A for 0.1 s need 6.87 mm² of copper in PVC: 6 mm² is too thin, 10 mm² does
     * (http://3.106.244.115/jetty/electrical-cable-calculation).
     */
    @Test
    void aConductorMustStandWhatItsDeviceLetsThrough() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400, 2500, 2000.0, 0.5, SystemEarthing.TN, 0.2);
        var device = breaker(16, 10_000, List.of(Sites.point(160, 0.1)), null);
        var hot = study(mains, feeder(null, 0, device), three("6 mm2", device, 20));
        assertThat(hot.findings())
                .filteredOn(f -> f.code() == FindingCode.FAULT_CONDUCTOR_HOT)
                .extracting(Finding::subject)
                .containsExactly("C1", "C1 (protective conductor)");
        assertThat(codes(study(mains, feeder(null, 0, device), three("10 mm2", device, 20))))
                .doesNotContain(FindingCode.FAULT_CONDUCTOR_HOT);
    }

    /**
     * 400 V, 10 kA, c 1.1 and 0.9, no feeder; 5 kVA, 4 %, 230 V one-phase between lines. Own: 0.04 · 230² / 5000 = 423.2 mohm,
     * K_T = 0.95 · 1.1 / 1.024 = 1.02051: 431.88 mohm. Ahead: 2 · 25.403 mohm · (230 / 400)² = 16.798 mohm. Highest 253 V /
     * hypot(431.88, 16.798) = 585.36 A; lowest 207 V / (16.798 + 423.2) = 470.5 A. Three-phase: 431.88 and 8.399 mohm, 253 / √3 /
     * 431.96 = 338.15 A.
     */
    @Test
    void transformersByHand() {
        var request = iec(plain(), feeder(null, 0, null));
        var points = new FaultStudy()
                .study(new FaultRequest(
                        request.codeBasis(),
                        request.mains(),
                        request.insulation(),
                        request.conductorTemperature(),
                        request.feeder(),
                        List.of(),
                        List.of(transformer(Feed.ONE_PHASE), transformer(Feed.THREE_PHASE))))
                .points();
        var one = points.get(2);
        assertThat(one.place()).isEqualTo(FaultPlace.TRANSFORMER_SECONDARY);
        assertThat(si(one.maximum().lineToLine())).isCloseTo(585.36, within(0.1));
        assertThat(si(one.minimum().lineToLine())).isCloseTo(470.5, within(0.1));
        assertThat(si(points.get(3).maximum().threePhase())).isCloseTo(338.15, within(0.1));
        assertThat(si(points.get(3).maximum().lineToLine())).isCloseTo(338.15 * Math.sqrt(3) / 2, within(0.1));
    }

    /** 230 V two-wire, 10 kA, to 24 V with 100 VA and 5 %: own 0.05 · 24² / 100 = 288 mohm; ahead (1.1 · 230 V / 10 kA) · (24/230)². */
    @Test
    void aTransformerOnALineAndNeutral() {
        var mains = Sites.mains(SupplySystem.ONE_PHASE_TWO_WIRE, 230, 10_000, null, null, null, null);
        var transformer = new FaultTransformer("T", Feed.ONE_PHASE, new Voltage(24), new ApparentPower(100), 0.05);
        var supply = SupplyCases.of(Sites.IEC, mains).lowest();
        assertThat(si(new TransformerFaults(Sites.IEC, mains)
                        .lowest(transformer, supply, Path.START)
                        .lineToLine()))
                .isCloseTo(0.9 * 24 / (0.288 + 0.0253 * 24 * 24 / 230 / 230), within(1e-6));
    }

    private static FaultTransformer transformer(Feed feed) {
        return new FaultTransformer("T", feed, new Voltage(230), new ApparentPower(5000), 0.04);
    }

    @Test
    void motorsOnTheLineFeedBack() {
        var fan = new CircuitEnd("fan", "/design/axes/0", new Length(2), null, new Current(101));
        var branch = Sites.branch("C1", Connection.THREE_PHASE, "35 mm2", breaker(125, 10_000), fan);
        assertThat(codes(study(plain(), feeder(null, 0, breaker(125, 10_000)), branch)))
                .contains(FindingCode.FAULT_MOTORS_FEED_BACK);
    }

    @Test
    void tablesNotReadInPrintAreNamed() {
        var branch =
                Sites.branch("C1", Connection.THREE_PHASE, "10 AWG", breaker(20, 14_000), drive("axis", 5, 14_000));
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 480, 10_000, null, null, null, null);
        assertThat(codes(new FaultStudy().study(northAmerican(mains, feeder(null, 0, null), branch))))
                .contains(FindingCode.FAULT_TABLE_FROM_MEMORY); // k of the 75 °C column
    }

    @Test
    void beyondMissingConductorsNothingIsKnown() {
        var result = study(stated(0.2), feeder(null, 10, null), three("6 mm2", breaker(16, 10_000), 20));
        assertThat(result.points()).extracting(FaultPoint::place).containsExactly(FaultPlace.SUPPLY_TERMINALS);
        assertThat(result.circuits()).extracting(CircuitFault::id).containsExactly("feeder");
        assertThat(result.circuits().getFirst().lowestFault()).isNull();
    }

    private static FaultCircuit three(String size, ProtectiveDevice device, double metres) {
        return Sites.branch("C1", Connection.THREE_PHASE, size, device, drive("axis", metres, 10_000));
    }

    private static FaultCircuit inGauge(FaultCircuit circuit, String size) {
        return Sites.branch(
                circuit.id(),
                circuit.connection(),
                size,
                circuit.device(),
                circuit.ends().toArray(CircuitEnd[]::new));
    }

    private static FaultResult study(Mains mains, FaultCircuit feeder, FaultCircuit... branches) {
        return new FaultStudy().study(iec(mains, feeder, branches));
    }

    private static List<FindingCode> codes(FaultResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    private static Finding finding(FaultResult result, FindingCode code) {
        return result.findings().stream()
                .filter(f -> f.code() == code)
                .reduce((one, other) -> {
                    throw new AssertionError("twice: " + one + other);
                })
                .orElseThrow();
    }

    private static double si(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }
}
