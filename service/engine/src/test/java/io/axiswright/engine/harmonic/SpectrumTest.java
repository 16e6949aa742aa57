package io.axiswright.engine.harmonic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The line currents of uncontrolled bridges. */
class SpectrumTest {

    private static final double PEAK = 400 * Math.sqrt(2);
    private static final double PHASE_PEAK = PEAK / Math.sqrt(3);

    private static Spectrum spectrum(Bridge bridge) {
        return Spectrum.of(bridge).orElseThrow();
    }

    private static double share(Spectrum spectrum, int h) {
        return spectrum.order(h).magnitude() / spectrum.order(1).magnitude();
    }

    /**
     * With a very large choke in the link and hardly any reactance in the lines the direct current is smooth, and the line
     * current is that of the ideal six-pulse bridge: 20.00, 14.29, 9.09, 7.69 … % (industrialmonitordirect.com, harmonics of
     * 6-pulse diode rectifiers), I_1 = √6/π I_d, distortion to order 49 30.0 %.
     */
    @Test
    void idealSixPulse() {
        Spectrum ideal = spectrum(new Bridge(true, PEAK, 1e-4, 2000, 50, 5000));
        for (int h : new int[] {5, 7, 11, 13, 17, 19, 23, 25}) {
            assertThat(share(ideal, h)).isCloseTo(1.0 / h, within(2e-3));
        }
        assertThat(share(ideal, 3)).isLessThan(1e-9);
        assertThat(share(ideal, 4)).isZero();
        assertThat(ideal.distortion()).isCloseTo(0.300, within(2e-3));
        double direct = 5000 / (3 / Math.PI * PEAK);
        assertThat(ideal.order(1).magnitude()).isCloseTo(2 * Math.sqrt(3) / Math.PI * direct, within(2e-3 * direct));
    }

    /** The same for one phase: a square wave, 1/h in every odd order, distortion 48.34 % (to order 49: 47.3 %). */
    @Test
    void idealOnePhase() {
        Spectrum ideal = spectrum(new Bridge(false, 325, 1e-4, 20_000, 50, 1000));
        for (int h : new int[] {3, 5, 7, 9, 11}) {
            assertThat(share(ideal, h)).isCloseTo(1.0 / h, within(2e-3));
        }
        double squares = 0;
        for (int h = 3; h < 50; h += 2) {
            squares += 1.0 / h / h;
        }
        assertThat(ideal.distortion()).isCloseTo(Math.sqrt(squares), within(2e-3));
    }

    /** Reactances and capacitor keep no power: what the first order takes from the sine of the mains is the load's. */
    @ParameterizedTest
    @CsvSource({
        "true, 0.02, 0, 0.1, 3000",
        "true, 0.3, 0, 0.1, 3000",
        "true, 2, 0, 0.1, 3000",
        "true, 6, 0, 0.05, 6000",
        "true, 0.1, 1.5, 0.1, 5000",
        "true, 1, 4, 0.1, 9000",
        "true, 0.05, 0, 1.9, 15000",
        "false, 0.05, 0, 0.2, 800",
        "false, 1, 0, 0.2, 800",
        "false, 4, 0, 0.2, 1500",
        "false, 0.3, 2, 0.2, 1000",
        "false, 0.3, 20, 0.4, 2000"
    })
    void powerIsThatOfTheLoad(boolean threePhase, double line, double link, double susceptance, double power) {
        double peak = threePhase ? PEAK : 325;
        Spectrum spectrum = spectrum(new Bridge(threePhase, peak, line, link, susceptance, power));
        double phase = threePhase ? PHASE_PEAK : peak;
        // v = V sin θ: its amplitude is −jV, so the power is the sine part of the current
        double drawn = (threePhase ? 3 : 1) * phase * -spectrum.order(1).im() / 2;
        assertThat(drawn).isCloseTo(power, within(1e-6 * power));
    }

    /**
     * Another way altogether: three phases with diodes that open and close gradually, integrated in small steps (Runge and Kutta,
     * fourth order), without any thought of which conduct; from two widths of that on to sudden ones.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 0.157, 4000", "1, 0.157, 4000", "3, 0.157, 8000", "0.5, 0.03, 3000"})
    void agreesWithAnIntegrationOfSmoothDiodes(double line, double susceptance, double power) {
        Spectrum exact = spectrum(new Bridge(true, PEAK, line, 0, susceptance, power));
        Spectrum wide = SmoothBridge.spectrum(PHASE_PEAK, line, susceptance, power, 0.12);
        Spectrum narrow = SmoothBridge.spectrum(PHASE_PEAK, line, susceptance, power, 0.06);
        double first = exact.order(1).magnitude();
        for (int h = 1; h < 26; h++) {
            Complex stepped = narrow.order(h).times(2).plus(wide.order(h).times(-1));
            assertThat(exact.order(h).plus(stepped.times(-1)).magnitude())
                    .as("order %d: %s against %s", h, exact.order(h), stepped)
                    .isLessThan(0.01 * first);
        }
    }

    /** More reactance, less distortion: the reason for chokes. */
    @Test
    void chokesSmooth() {
        double last = Double.POSITIVE_INFINITY;
        for (double line : new double[] {0.05, 0.2, 0.5, 1, 2, 4}) {
            double distortion =
                    spectrum(new Bridge(true, PEAK, line, 0, 0.3, 5000)).distortion();
            assertThat(distortion).isLessThan(last);
            last = distortion;
        }
    }

    /** Overlap beyond 60° is another kind of conduction, which is not worked out. */
    @Test
    void tooWeakANetworkIsToldApart() {
        assertThat(Spectrum.of(new Bridge(true, PEAK, 60, 0, 0.1, 3000))).isEmpty();
    }
}
