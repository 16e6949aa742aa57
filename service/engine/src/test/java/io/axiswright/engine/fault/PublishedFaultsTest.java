package io.axiswright.engine.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.supply.Connection;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Published worked examples; where a page's own arithmetic slips, the test says so. */
class PublishedFaultsTest {

    private static final double SQRT_3 = Math.sqrt(3);

    /**
     * 300 kVA, 2 % less a tenth, 208 V; 20 ft of two 500 kcmil per phase in steel, constant C = 22 185. Printed: 46 273 A at
     * the transformer, f = 0.174, M = 0.852 (https://www.scribd.com/document/325386963/shortcircuitcalculations-160210110236;
     * the product is cut off there, 46 273 · 0.85202 = 39 426 A). The method adds impedances by magnitude: 1/C is ohm per foot.
     */
    @Test
    void pointToPointThreePhase() {
        var supply = supply(208, 208 / SQRT_3, 46_273, null);
        double fault = amperes(
                supply.at(line(20 / (22_185.0 * 2)), Connection.THREE_PHASE).threePhase());
        assertThat(fault / 46_273).isCloseTo(0.852, within(0.0005));
        assertThat(fault).isCloseTo(39_426, within(1.0));
    }

    /** The same by resistance and reactance, NFPA 70 Table 9 (0.029 + j0.048 ohm per 1000 ft), source a pure reactance: by hand. */
    @Test
    void pointToPointByResistanceAndReactance() {
        var supply = supply(208, 208 / SQRT_3, 46_273, 0.0);
        var conductors = path(new Impedance(0.029 * 0.02 / 2, 0.048 * 0.02 / 2), null, null);
        // |j2.5952 + 0.29 + j0.48| mohm = 3.0889 mohm
        assertThat(amperes(supply.at(conductors, Connection.THREE_PHASE).threePhase()))
                .isCloseTo(38_878, within(10.0));
    }

    /**
     * One phase 240/120 V, 46 296 A at the transformer, then 150 ft with C = 13 923, 40 ft with 2430, 30 ft with 617. Printed
     * line to line: 8978 A, 4024 A, 1530 A (https://www.scribd.com/document/230809087/FaultV6-2-1).
     */
    @Test
    void pointToPointOnePhaseLineToLine() {
        var supply = supply(240, 120, 46_296, null);
        double service = 150 / 13_923.0;
        double panel = service + 40 / 2_430.0;
        assertThat(lineToLine(supply, service)).isCloseTo(8_978, within(1.0));
        assertThat(lineToLine(supply, panel)).isCloseTo(4_024, within(1.0));
        assertThat(lineToLine(supply, panel + 30 / 617.0)).isCloseTo(1_530, within(1.0));
    }

    /**
     * The same sheet line to neutral, from 7457 A at the service: 40 ft with C = 1995, 30 ft with 617. Printed: 2135 A, 782 A.
     * (Its first step leaves the factor 1.5 it applies to the current out of f; from there on it is consistent.)
     */
    @Test
    void pointToPointOnePhaseLineToNeutral() {
        var supply = supply(240, 120, 7_457, null);
        assertThat(lineToNeutral(supply, 40 / 1_995.0)).isCloseTo(2_135, within(1.0));
        assertThat(lineToNeutral(supply, 40 / 1_995.0 + 30 / 617.0)).isCloseTo(782, within(1.0));
    }

    /** 1 MVA, 400 V, 5 %: 8.000 mohm and 28.87 kA (https://myelectrical.com/questions/view/question/id/716, the answer there). */
    @Test
    void impedanceBehindAFaultCurrent() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 400, 28_870, null, null, null, null);
        assertThat(SupplyCases.of(Sites.NA, mains).highest().impedance()).isCloseTo(0.008, within(1e-6));
    }

    /**
     * 1500 kVA, 480 V, 5.75 %: 31 374 A (https://iaeimagazine.org/magazine/2018/08/22/short-circuit-calculations-using-transformer-and-source-impedance/);
     * 0.0575 · 480² / 1.5 MVA = 8.832 mohm.
     */
    @Test
    void impedanceBehindAFaultCurrentAt480Volts() {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_FOUR_WIRE, 480, 31_374, null, null, null, null);
        assertThat(SupplyCases.of(Sites.NA, mains).highest().impedance()).isCloseTo(0.008832, within(2e-6));
    }

    /**
     * 420 V; cable 16.95 mohm resistance and 5.90 mohm reactance. Printed 13.51 kA, without the impedance ahead of the main
     * board, where 24.93 kA are printed (https://ru.scribd.com/document/341834748/11167988343-Sample-Short-Circuit-Calculation).
     * With it, 2.26 + j9.46 mohm worked back from 24.93 kA and its printed peak, the board has 9.86 kA: by hand.
     */
    @Test
    void resistanceAndReactanceWithAndWithoutWhatLiesAhead() {
        var cable = path(new Impedance(0.016947, 0.0059), null, null);
        assertThat(amperes(supply(420, 420 / SQRT_3, 1e12, 0.0)
                        .at(cable, Connection.THREE_PHASE)
                        .threePhase()))
                .isCloseTo(13_510, within(10.0));
        assertThat(amperes(supply(420, 420 / SQRT_3, 24_930, 2.26 / 9.46)
                        .at(cable, Connection.THREE_PHASE)
                        .threePhase()))
                .isCloseTo(9_860, within(10.0));
    }

    /**
     * 30 m of 6 mm² (3.08 mohm/m) with a protective conductor of 2.5 mm² (7.41 mohm/m), 1.2 for heat, 0.15 ohm outside:
     * 0.15 + 0.37764 = 0.52764 ohm (https://cr4.globalspec.com/thread/38548/Calculating-Earth-Loop-Impedance prints 0.15 + 0.38 =
     * 0.52, cut off).
     */
    @Test
    void earthFaultLoop() {
        var supply = new SupplyCase(230, 400, 0.01, 0.15, null);
        double metres = 30 * 1.2;
        var conductors = path(new Impedance(3.08e-3 * metres, 0), null, new Impedance(7.41e-3 * metres, 0));
        assertThat(supply.loop(conductors)).isCloseTo(0.52764, within(1e-5));
        assertThat(amperes(supply.at(conductors, Connection.THREE_PHASE).lineToEarth()))
                .isCloseTo(435.9, within(0.05));
    }

    /**
     * The transformers of three of these examples behind an infinite bus: 300 kVA, 1.8 %, 208 V, 46 273 A printed from rounded
     * factors; 1500 kVA, 5.75 %, 480 V, 31 374 A printed from 1804 A; 1 MVA, 5 %, 400 V, 28.9 kA printed.
     */
    @Test
    void transformersBehindAnInfiniteBus() {
        assertThat(secondary(300e3, 0.018, 208)).isCloseTo(46_273, within(15.0));
        assertThat(secondary(1500e3, 0.0575, 480)).isCloseTo(31_374, within(5.0));
        assertThat(secondary(1e6, 0.05, 400)).isCloseTo(28_868, within(1.0));
    }

    private static double secondary(double power, double impedance, double volts) {
        var mains = Sites.mains(SupplySystem.THREE_PHASE_THREE_WIRE, 10_000, 200_000, null, 0.0, null, null);
        var transformer =
                new FaultTransformer("T", Feed.THREE_PHASE, new Voltage(volts), new ApparentPower(power), impedance);
        var bus = new SupplyCase(10_000 / SQRT_3, 10_000, 0, 0, 0.0);
        return amperes(new TransformerFaults(Sites.NA, mains)
                .highest(transformer, bus, Path.START)
                .threePhase());
    }

    private static SupplyCase supply(double toLine, double toNeutral, double fault, @Nullable Double ratio) {
        return new SupplyCase(toNeutral, toLine, toNeutral / fault, Double.NaN, ratio);
    }

    private static double lineToLine(SupplyCase supply, double ohms) {
        return amperes(supply.at(line(ohms), Connection.LINE_TO_LINE).lineToLine());
    }

    /** The method counts the length twice, once for each conductor. */
    private static double lineToNeutral(SupplyCase supply, double ohms) {
        return amperes(supply.at(line(ohms), Connection.LINE_TO_NEUTRAL).lineToNeutral());
    }

    private static Path line(double ohms) {
        return path(new Impedance(ohms, 0), new Impedance(ohms, 0), null);
    }

    private static Path path(Impedance line, @Nullable Impedance neutral, @Nullable Impedance protective) {
        return new Path(line, neutral, protective);
    }

    private static double amperes(@Nullable Current current) {
        return Objects.requireNonNull(current).si();
    }
}
