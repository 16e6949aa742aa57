package io.axiswright.engine.conductor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.standard.Confidence;
import io.axiswright.engine.standard.Source;
import org.junit.jupiter.api.Test;

/** Published voltage drops, from the impedances their pages state. */
class VoltageDropTest {

    private static final Source PAGE = new Source("the page's own value", Confidence.CONFIRMED_BY_ONE);
    private static final double FOOT = 0.3048;
    private static final double PER_KFT = 1 / 304.8;
    private static final double PER_KM = 1e-3;

    private static Impedance impedance(double resistance, double reactance) {
        return new Impedance(resistance, reactance, PAGE);
    }

    private static double threePhase(double amperes, double ohmPerKft, double feet) {
        return VoltageDrop.volts(
                CircuitKind.AC_THREE_PHASE, amperes, impedance(ohmPerKft * PER_KFT, 0), 1, feet * FOOT);
    }

    /**
     * ecmweb.com/content/basics-calculating-voltage-drop: 20 A, effective Z 1.1 and 1.7 ohm/kft. Printed 11.8 and 29 V agree;
     * printed 7.7 V (200 ft) and 18 V (500 ft) are slips of the page: 7.62 and 19.05 V.
     */
    @Test
    void threePhaseByEffectiveImpedance() {
        assertThat(threePhase(20, 1.1, 200)).isCloseTo(7.6210, within(5e-4));
        assertThat(threePhase(20, 1.7, 200)).isCloseTo(11.78, within(5e-3));
        assertThat(threePhase(20, 1.1, 500)).isCloseTo(19.05, within(5e-3));
        assertThat(threePhase(20, 1.7, 500)).isCloseTo(29.44, within(1e-2));
    }

    /** Same page: longest runs at 3 % of 480 V: 377 ft (10 AWG) and 244 ft (12 AWG), truncated. */
    @Test
    void longestRun() {
        assertThat(0.03 * 480 / threePhase(20, 1.1, 1)).isBetween(377.0, 378.0);
        assertThat(0.03 * 480 / threePhase(20, 1.7, 1)).isBetween(244.0, 245.0);
    }

    /**
     * Army distribution course, armyengineer.tpub.com/EN0389 Table 1D: No. 2, 8.5 kVA, 300 ft: 0.96 %; No. 4, 6 kVA, 450 ft:
     * 1.6 %. System taken as 120/208 V three-phase (inferred), stranded copper at 25 °C: R20 · 1.02 · 259.5/254.5.
     */
    @Test
    void armyCourse() {
        double stranded25 = 1.02 * 259.5 / 254.5;
        double second = threePhase(8500 / (Math.sqrt(3) * 208), 0.1563 * stranded25, 300) / 208;
        double fourth = threePhase(6000 / (Math.sqrt(3) * 208), 0.2485 * stranded25, 450) / 208;
        assertThat(second).isCloseTo(0.0096, within(5e-5));
        assertThat(fourth).isCloseTo(0.0161, within(5e-5));
    }

    /** 84.9 A, 100 m, 0.87 and 0.08 ohm/km, cos φ 0.85 (32.198.53.126/cable-sizing-formula): printed 11.8 V is wrong, 11.494 V. */
    @Test
    void threePhaseWithReactance() {
        double volts =
                VoltageDrop.volts(CircuitKind.AC_THREE_PHASE, 84.9, impedance(0.87 * PER_KM, 0.08 * PER_KM), 0.85, 100);
        assertThat(volts).isCloseTo(11.494, within(1e-3));
        assertThat(volts / 400).isCloseTo(0.02874, within(1e-5));
    }

    /** 21.74 A, 40 m, 230 V (98.81.11.244/how-to-calculate-cable-sizes): 15.5, 9.77 and 6.45 V. */
    @Test
    void onePhase() {
        assertThat(onePhase(8.91)).isCloseTo(15.496, within(1e-3));
        assertThat(onePhase(5.62)).isCloseTo(9.774, within(1e-3));
        assertThat(onePhase(3.71)).isCloseTo(6.452, within(1e-3));
    }

    private static double onePhase(double ohmPerKm) {
        return VoltageDrop.volts(CircuitKind.AC_ONE_PHASE, 21.74, impedance(ohmPerKm * PER_KM, 0), 1, 40);
    }

    /**
     * 24 V DC, 5 A, 30 m, at most 3 % (infoneva.com, analyzing supply startup logs): the page recommends 10 to 12 AWG, which is
     * wrong by its own table: 1.632 and 1.026 V; 8 AWG is the first that passes, 0.645 V of 0.72 V.
     */
    @Test
    void directCurrent() {
        assertThat(direct(5.44)).isCloseTo(1.632, within(1e-9));
        assertThat(direct(3.42)).isCloseTo(1.026, within(1e-9));
        assertThat(direct(2.15)).isCloseTo(0.645, within(1e-9)).isLessThan(0.03 * 24);
    }

    private static double direct(double ohmPerKm) {
        return VoltageDrop.volts(CircuitKind.DC, 5, impedance(ohmPerKm * PER_KM, 1), 1, 30);
    }
}
