package io.axiswright.engine.fault;

import static io.axiswright.engine.fault.Sites.breaker;
import static io.axiswright.engine.fault.Sites.drive;
import static io.axiswright.engine.fault.Sites.plain;
import static io.axiswright.engine.fault.Sites.quick;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.Copies;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Connection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Faults on circuits behind transformers. */
class TransformerCircuitFaultsTest {

    private static FaultResult study(SystemEarthing earthing, Feed feed, double impedance, double metres) {
        Connection connection = feed == Feed.THREE_PHASE ? Connection.THREE_PHASE : Connection.LINE_TO_NEUTRAL;
        var feeder = new FaultCircuit(
                "T1/feeder",
                "/design/axes/0",
                connection,
                connection == Connection.LINE_TO_NEUTRAL,
                new ConductorSize("4 mm2"),
                new ConductorSize("4 mm2"),
                breaker(20, 10_000),
                List.of(new CircuitEnd("panel behind T1", "/design/axes/0", new Length(0), null, null)));
        var branch = Sites.branch("T1/C1", connection, "2.5 mm2", quick(16, 20_000), drive("axis", metres, 5000));
        var transformer = new FaultTransformer(
                "T1", feed, new Voltage(230), new ApparentPower(5000), impedance, earthing, feeder, List.of(branch));
        var request = Sites.iec(plain(), Sites.feeder(null, 0, quick(63, 90_000)));
        return new FaultStudy().study(Copies.with(request, "transformers", List.of(transformer)));
    }

    private static FaultPoint at(FaultResult result, FaultPlace place) {
        return result.points().stream()
                .filter(point -> point.place() == place)
                .findFirst()
                .orElseThrow();
    }

    private static double si(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static List<FindingCode> codes(FaultResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }

    /**
     * 400 V, 10 kA: Z_Q = 1.1 · 230.94 / 10 000 = 25.403 mohm. Between two lines, seen from 230 V: 2 · 25.403 · (230/400)² = 16.798
     * mohm. Transformer 0.04 · 230² / 5000 = 423.2 mohm, K_T = 0.95 · 1.1 / 1.024 = 1.020508: 431.879 mohm. Highest: hypot = 432.205
     * mohm, 253 V: 585.37 A. Lowest: 439.998 mohm, 207 V: 470.46 A. 10 m of 2.5 mm² cold, both conductors: 159.6 + j1.6 mohm; the
     * source with R/X = 0.1 is 43.006 + j430.060: |202.606 + j431.660| = 476.846 mohm, 530.57 A. Hot, out and back by the protective
     * conductor: 190.961 + j1.6, by magnitude 190.968: 630.966 mohm, 328.07 A. 16 A trips at 160 A: 207 / 160 = 1.29375 ohm.
     */
    @Test
    void onePhaseByHand() {
        var result = study(SystemEarthing.TN, Feed.ONE_PHASE, 0.04, 10);
        var terminals = at(result, FaultPlace.TRANSFORMER_SECONDARY);
        assertThat(si(terminals.maximum().lineToLine())).isCloseTo(585.37, within(0.02));
        assertThat(si(terminals.maximum().lineToEarth())).isCloseTo(585.37, within(0.02));
        assertThat(si(terminals.minimum().lineToEarth())).isCloseTo(470.46, within(0.02));
        var load = at(result, FaultPlace.LOAD);
        assertThat(load.id()).isEqualTo("axis");
        assertThat(si(load.maximum().lineToNeutral())).isCloseTo(530.57, within(0.05));
        assertThat(si(load.minimum().lineToEarth())).isCloseTo(328.07, within(0.05));
        var circuit = result.circuits().getLast();
        assertThat(circuit.id()).isEqualTo("T1/C1");
        assertThat(si(circuit.loopImpedance())).isCloseTo(0.630966, within(1e-5));
        assertThat(si(circuit.loopImpedanceLimit())).isCloseTo(1.29375, within(1e-9));
        assertThat(si(circuit.disconnectionTime())).isEqualTo(0.4);
        assertThat(codes(result)).doesNotContain(FindingCode.FAULT_DISCONNECTION_SLOW);
    }

    /**
     * Three phases: ahead 25.403 · (230/400)² = 8.399 mohm, own 431.879. A fault of three lines sees hypot(8.399, 431.879) =
     * 431.961 mohm, 146.070 V: 338.16 A; one to earth hypot(2/3 · 8.399, 431.879) = 431.915 mohm: 338.19 A. On stiff transformers
     * that difference counts: 0.1 % is 10.797 mohm (K_T 1.044373: 11.05), hypot(8.399, 11.050) = 13.880 and hypot(5.599, 11.050) =
     * 12.387 mohm.
     */
    @Test
    void threePhasesByHand() {
        var usual = at(study(SystemEarthing.TN, Feed.THREE_PHASE, 0.04, 10), FaultPlace.TRANSFORMER_SECONDARY);
        assertThat(si(usual.maximum().threePhase())).isCloseTo(338.16, within(0.02));
        assertThat(si(usual.maximum().lineToEarth())).isCloseTo(338.19, within(0.02));
        var stiff = at(study(SystemEarthing.TN, Feed.THREE_PHASE, 0.001, 10), FaultPlace.TRANSFORMER_SECONDARY);
        assertThat(si(stiff.maximum().threePhase()) / si(stiff.maximum().lineToEarth()))
                .isCloseTo(12.387 / 13.880, within(1e-3));
        assertThat(si(stiff.minimum().threePhase()))
                .isCloseTo(si(stiff.minimum().lineToEarth()), within(1e-9));
    }

    @Test
    void anUnearthedSecondaryKeepsItsFirstFault() {
        var result = study(SystemEarthing.IT, Feed.ONE_PHASE, 0.04, 10);
        assertThat(at(result, FaultPlace.LOAD).maximum().lineToEarth()).isNull();
        assertThat(result.circuits().getLast().loopImpedance()).isNull();
        assertThat(result.findings())
                .filteredOn(f -> f.code() == FindingCode.FAULT_FIRST_FAULT_STAYS)
                .extracting(Finding::pointer)
                .containsExactly("/design/installation/transformers/earthing");
    }

    /** 300 m of 2.5 mm²: 6.17 ohm, 207 V: 34 A do not trip what trips at 160 A. */
    @Test
    void aLongCircuitBehindATransformerDoesNotDisconnect() {
        assertThat(codes(study(SystemEarthing.TN, Feed.ONE_PHASE, 0.04, 300)))
                .contains(FindingCode.FAULT_DISCONNECTION_SLOW);
    }

    /** A higher impedance never lets more through, and lowers what is left at the far end. */
    @Test
    void moreImpedanceNeverMeansMoreCurrent() {
        double before = Double.POSITIVE_INFINITY;
        for (double impedance : new double[] {0.005, 0.01, 0.02, 0.04, 0.08, 0.16}) {
            var load = at(study(SystemEarthing.TN, Feed.ONE_PHASE, impedance, 10), FaultPlace.LOAD);
            Current highest = load.maximum().largest();
            assertThat(highest.si())
                    .isLessThan(before)
                    .isGreaterThan(load.minimum().smallest().si());
            before = highest.si();
        }
    }
}
