package io.axiswright.engine.controlpower;

import static io.axiswright.engine.controlpower.ControlParts.MAINS;
import static io.axiswright.engine.controlpower.ControlParts.SITE;
import static io.axiswright.engine.controlpower.ControlParts.buffer;
import static io.axiswright.engine.controlpower.ControlParts.cable;
import static io.axiswright.engine.controlpower.ControlParts.device;
import static io.axiswright.engine.controlpower.ControlParts.drive;
import static io.axiswright.engine.controlpower.ControlParts.node;
import static io.axiswright.engine.controlpower.ControlParts.supply;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.catalogue.BufferKind;
import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.LoadLaw;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** A gateway of 6 W on a supply of 1.1 A that lasts 20 ms at rated load; 1 cm of 10 mm² loses nothing that counts. */
class HoldUpTest {

    private static final double OUTPUT = 24;
    private static final double SOURCE = 24 * 0.99;

    private static ControlPowerResult size(@Nullable Time keepAlive, List<BufferUnit> buffers, ControlNode... nodes) {
        return new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        new ControlPower("panel", 0, true, null, keepAlive, null, null),
                        SITE,
                        MAINS,
                        List.of(nodes),
                        List.of(supply("s", 100, 1.1, Feed.ONE_PHASE, 230, OUTPUT, 0.02)),
                        List.of(cable("c", 10, 0.01, "10 mm2")),
                        List.of(),
                        buffers));
    }

    private static ControlLoad stopping(double logic, double restTime, boolean keepAlive) {
        return new ControlLoad(
                "x",
                0,
                drive(logic, 18, true),
                null,
                cable("spur", 10, 0.001, "10 mm2"),
                keepAlive,
                new Time(restTime));
    }

    private static HoldUp holdUp(ControlPowerResult result, String subject) {
        return result.holdUps().stream()
                .filter(h -> h.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    /** 20 ms · 1.1 A/(6 W/23.76 V) = 87.1 ms. */
    @Test
    void theSupplyAloneByHand() {
        var result = size(null, List.of(), node("g", "p", 1, null, 0));
        assertThat(holdUp(result, "g").inBand().si()).isCloseTo(0.02 * 1.1 / (6 / SOURCE), within(1e-6));
        assertThat(holdUp(result, "g").needed()).isNull();
        assertThat(result.supplies().getFirst().buffer()).isNull();
    }

    /** A stop of 3 s with 20 W: E = 26 W · (3 s − 20 ms · 1.1/1.094) → three units of 40 J, 80 % of it left. */
    @Test
    void aHeldVoltageGivesItsEnergyEvenly() {
        var unit = buffer("battery", 50, BufferKind.BATTERY, 40, new Voltage(23), 8);
        var result = size(null, List.of(unit), node("g", "p", 1, null, 0, stopping(20, 3, false)));
        double own = 0.02 * 1.1 / (26 / SOURCE);
        assertThat(result.supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("battery", 3));
        double heavy = 3 - own;
        // then in standby, which is the same 26 W here
        double all = own + 3 * 40 * 0.8 / 26;
        assertThat(heavy).isLessThan(all);
        assertThat(holdUp(result, "x").inBand().si()).isCloseTo(all, within(1e-3));
        assertThat(holdUp(result, "x").needed()).isEqualTo(new Time(3));
        // the gateway is needed as long as its axis
        assertThat(holdUp(result, "g").needed()).isEqualTo(new Time(3));
        assertThat(codes(result)).doesNotContain(FindingCode.CONTROL_STOP_OUTLASTS_HOLD_UP);
    }

    /** t = C (V_1² − V_2²)/(2 P) with C = 2 E/V_out²: the textbook form of a constant-power load. */
    @Test
    void aCapacitorOnTheOutputFallsByTheTextbookFormula() {
        var unit = buffer("capacitor", 50, BufferKind.CAPACITOR, 300, null, 2);
        var result = size(null, List.of(unit), node("g", "p", 1, null, 0, stopping(20, 1, false)));
        double own = 0.02 * 1.1 / (26 / SOURCE);
        double capacitance = 2 * 300 * 0.8 / (OUTPUT * OUTPUT);
        double falling = capacitance * (SOURCE * SOURCE - 20.4 * 20.4) / (2 * 26);
        assertThat(result.supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("capacitor", 1));
        assertThat(holdUp(result, "x").inBand().si()).isCloseTo(own + falling, within(own * 1e-2));
    }

    /**
     * Along 10 m of 0.75 mm², with a sensor of 0.5 A and a valve of 2 A that goes off as the stop is over: C ∫ dV/I(V) by the
     * Gauss-Legendre integration and Brent's root finder of a general library, I(V) from the quadratic of one node.
     */
    @Test
    void aCapacitorWithAChangeOfLoadsByALibrary() {
        double way = 2 * 0.026 * 10 * (1 + 0.00393 * 40);
        var node = new ControlNode(
                "g",
                ControlParts.gateway(6, 19.2, 20),
                "p",
                1,
                null,
                new Length(10),
                new Length(10),
                List.of(stopping(20, 0.4, false)),
                List.of(
                        new FieldLoad(device("sensor", LoadLaw.CONSTANT_CURRENT, 0.5, false), 0),
                        new FieldLoad(device("valve", LoadLaw.RESISTIVE, 2, true), 1)));
        var result = new ControlPowerSizing()
                .size(new ControlPowerRequest(
                        new ControlPower("panel", 0, true),
                        SITE,
                        MAINS,
                        List.of(node),
                        List.of(supply("s", 100, 10, Feed.ONE_PHASE, 230, OUTPUT, 0.02)),
                        List.of(cable("c", 10, 10, "0.75 mm2")),
                        List.of(),
                        List.of(buffer("capacitor", 50, BufferKind.CAPACITOR, 1000, null, 1))));

        double capacitance = 2 * 1000 * 0.8 / (OUTPUT * OUTPUT);
        double own = result.supplies().getFirst().holdUp().si();
        var gauss = new IterativeLegendreGaussIntegrator(5, 1e-12, 1e-14);
        UnivariateFunction heavy = v -> 1 / current(v, way, 2.0 / 24);
        UnivariateFunction light = v -> 1 / current(v, way, 0);
        double change = new BrentSolver(1e-12)
                .solve(
                        1000,
                        v -> own + capacitance * gauss.integrate(10_000, heavy, v, SOURCE) - 0.4,
                        21,
                        SOURCE - 1e-6);
        // the node is at 20.4 V in standby
        double end = 20.4 + way * (26 / 20.4 + 0.5);
        double expected = 0.4 + capacitance * gauss.integrate(10_000, light, end, change);
        assertThat(result.supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("capacitor", 1));
        assertThat(holdUp(result, "g").inBand().si()).isCloseTo(expected, within(1e-4));
    }

    /** Out of a source of that voltage: 26 W, 0.5 A and a conductance behind one resistance. */
    private static double current(double source, double way, double conductance) {
        double rest = source - way * 0.5;
        double factor = 1 + way * conductance;
        double voltage = (rest + Math.sqrt(rest * rest - 4 * factor * way * 26)) / (2 * factor);
        return (source - voltage) / way;
    }

    /** After a stop of 1 s at 26 W the battery feeds standby, here the same, for 30 s in all: 26 W · 30 s / (0.8 · 100 J) = 9.75. */
    @Test
    void positionsAreKeptAsLongAsAsked() {
        var unit = buffer("battery", 50, BufferKind.BATTERY, 100, new Voltage(23), 20);
        var result = size(new Time(30), List.of(unit), node("g", "p", 1, null, 0, stopping(20, 1, true)));
        assertThat(result.supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("battery", 10));
        assertThat(holdUp(result, "x").needed()).isEqualTo(new Time(30));
        assertThat(codes(result))
                .doesNotContain(FindingCode.CONTROL_KEEP_ALIVE_SHORT, FindingCode.CONTROL_KEEP_ALIVE_HOLD_UP);
    }

    @Test
    void withoutABufferThatLastsBothAreSaid() {
        var small = buffer("battery", 50, BufferKind.BATTERY, 1, new Voltage(23), 1);
        var result = size(new Time(30), List.of(small), node("g", "p", 1, null, 0, stopping(20, 1, true)));
        assertThat(codes(result))
                .contains(FindingCode.CONTROL_STOP_OUTLASTS_HOLD_UP, FindingCode.CONTROL_KEEP_ALIVE_SHORT);
        assertThat(result.supplies().getFirst().buffer()).isNull();
    }

    /** A held voltage below the band is of no use, nor is a buffer that gives less current than the loads take. */
    @Test
    void aBufferOutOfBandIsNotTaken() {
        var low = buffer("low", 1, BufferKind.BATTERY, 1000, new Voltage(20), 1);
        var good = buffer("good", 90, BufferKind.BATTERY, 1000, new Voltage(23), 1);
        var result = size(null, List.of(low, good), node("g", "p", 1, null, 0, stopping(20, 1, false)));
        assertThat(result.supplies().getFirst().buffer()).isEqualTo(new ChosenBuffer("good", 1));
    }

    private static List<FindingCode> codes(ControlPowerResult result) {
        return result.findings().stream().map(Finding::code).toList();
    }
}
