package io.axiswright.engine.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coefficients of the motion laws against the table of normalised coefficients (numerical double integration of each
 * acceleration function; peaks of the cycloidal, 3-4-5, 4-5-6-7, modified sine and modified trapezoid laws agree with Norton,
 * Cam Design and Manufacturing Handbook, and VDI 2143, both from memory) and its closed forms.
 */
class NormalisedLawTest {

    /** A law with its printed Cv, Ca, Cj (infinite: jumps of acceleration), Crms and Cp. */
    record Row(NormalisedLaw law, double cv, double ca, double cj, double crms, double cvrms, double cp) {}

    static Stream<Row> table() {
        double jump = Double.POSITIVE_INFINITY;
        return Stream.of(
                row(NormalisedLaw.trapezoidal(0.5, 0.5), 2, 4, jump, 4, 1.1547, 8),
                row(NormalisedLaw.trapezoidal(1 / 3.0, 1 / 3.0), 1.5, 4.5, jump, 3.6742, 1.1180, 6.75),
                row(NormalisedLaw.trapezoidal(0.25, 0.25), 1.3333, 5.3333, jump, 3.7712, 1.0887, 7.1111),
                row(NormalisedLaw.SIMPLE_HARMONIC, 1.5708, 4.9348, jump, 3.4894, 1.1107, 3.8758),
                row(NormalisedLaw.CYCLOIDAL, 2, 6.2832, 39.4784, 4.4429, 1.2247, 8.1621),
                row(NormalisedLaw.POLYNOMIAL_345, 1.875, 5.7735, 60, 4.1404, 1.1952, 6.6943),
                row(NormalisedLaw.POLYNOMIAL_4567, 2.1875, 7.5132, 52.5, 5.0452, 1.2774, 10.7502),
                row(NormalisedLaw.MODIFIED_SINE, 1.7596, 5.5280, 69.4664, 3.9089, 1.1677, 5.4578),
                row(NormalisedLaw.MODIFIED_TRAPEZOID, 2, 4.8881, 61.4260, 4.2332, 1.1992, 8.0900),
                row(NormalisedLaw.sCurve(1 / 3.0, 0.25), 1.5, 5.1429, 123.4286, 3.8333, 1.1310, 7.1632),
                row(NormalisedLaw.sCurve(1 / 3.0, 0.5), 1.5, 6, 72, 4, 1.1414, 7.4999),
                row(NormalisedLaw.sCurve(1 / 3.0, 0.75), 1.5, 7.2, 57.6, 4.1569, 1.1485, 7.56),
                row(NormalisedLaw.sCurve(1 / 3.0, 1), 1.5, 9, 54, 4.2426, 1.1511, 7.3485),
                row(NormalisedLaw.sCurve(0.5, 0.25), 2, 4.5714, 73.1429, 4.1731, 1.1878, 8.4898),
                row(NormalisedLaw.sCurve(0.5, 0.5), 2, 5.3333, 42.6667, 4.3546, 1.2141, 8.8888),
                row(NormalisedLaw.sCurve(0.5, 0.75), 2, 6.4, 34.1333, 4.5255, 1.2318, 8.96),
                row(NormalisedLaw.sCurve(0.5, 1), 2, 8, 32, 4.6188, 1.2383, 8.7093));
    }

    private static Row row(NormalisedLaw law, double cv, double ca, double cj, double crms, double cvrms, double cp) {
        return new Row(law, cv, ca, cj, crms, cvrms, cp);
    }

    @ParameterizedTest
    @MethodSource("table")
    void coefficientsAreThoseOfTheTable(Row row) {
        double power = 0;
        double squares = 0;
        double speedSquares = 0;
        double distance = 0;
        for (NormalisedLaw.Stretch stretch : row.law.stretches()) {
            Polynomial speed = stretch.speed();
            Polynomial acceleration = speed.derivative();
            Polynomial product = speed.times(acceleration);
            for (double u : product.extremalPoints(0, stretch.length())) {
                power = Math.max(power, product.at(u));
            }
            squares += acceleration.times(acceleration).integral(0, stretch.length());
            speedSquares += speed.times(speed).integral(0, stretch.length());
            distance += speed.integral(0, stretch.length());
        }
        assertThat(row.law.topSpeed()).isCloseTo(row.cv, within(5.1e-5));
        assertThat(row.law.acceleration()).isCloseTo(row.ca, within(5.1e-5));
        assertThat(row.law.deceleration()).isCloseTo(row.ca, within(5.1e-5));
        if (Double.isFinite(row.cj)) {
            assertThat(row.law.jerk()).isCloseTo(row.cj, within(5.1e-5));
        } else {
            assertThat(row.law.jerk()).isInfinite();
        }
        assertThat(Math.sqrt(squares)).isCloseTo(row.crms, within(5.1e-5));
        assertThat(Math.sqrt(speedSquares)).isCloseTo(row.cvrms, within(5.1e-5));
        assertThat(power).isCloseTo(row.cp, within(1.1e-4));
        assertThat(distance).isCloseTo(1, within(1e-12));
        NormalisedLaw.Stretch last = row.law.stretches().getLast();
        assertThat(last.speed().at(last.length())).isCloseTo(0, within(1e-12));
        assertThat(last.start() + last.length()).isCloseTo(1, within(1e-12));
    }

    /** Closed forms of the sine laws: Cv, Ca, Cj and Crms to the accuracy at which sines are taken as polynomials. */
    @Test
    void sineLawsKeepTwelveDigits() {
        double pi = Math.PI;
        closed(NormalisedLaw.CYCLOIDAL, 2, 2 * pi, pi * Math.sqrt(2));
        closed(NormalisedLaw.SIMPLE_HARMONIC, pi / 2, pi * pi / 2, pi * pi / (2 * Math.sqrt(2)));
        closed(
                NormalisedLaw.MODIFIED_SINE,
                4 * pi / (4 + pi),
                4 * pi * pi / (4 + pi),
                4 * pi * pi / (4 + pi) / Math.sqrt(2));
        closed(NormalisedLaw.MODIFIED_TRAPEZOID, 2, 8 * pi / (2 + pi), 8 * pi / (2 + pi) * Math.sqrt(3) / 2);
        closed(NormalisedLaw.POLYNOMIAL_4567, 35 / 16.0, 84 / (5 * Math.sqrt(5)), 420 / Math.sqrt(6930));
        assertThat(NormalisedLaw.CYCLOIDAL.stretches()).hasSizeLessThan(40);
    }

    private static void closed(NormalisedLaw law, double cv, double ca, double crms) {
        double squares = law.stretches().stream()
                .mapToDouble(s ->
                        s.speed().derivative().times(s.speed().derivative()).integral(0, s.length()))
                .sum();
        assertThat(law.topSpeed()).isCloseTo(cv, within(1e-11));
        assertThat(law.acceleration()).isCloseTo(ca, within(1e-11));
        assertThat(Math.sqrt(squares)).isCloseTo(crms, within(1e-11));
    }

    /** Closed forms for unequal shares: Cv = 1/(1 − (b1+b2)/2), a1 = Cv/b1, a2 = Cv/b2, Crms = Cv·sqrt(1/b1 + 1/b2). */
    @Test
    void trapezoidOfUnequalShares() {
        List<NormalisedLaw.Stretch> stretches =
                NormalisedLaw.trapezoidal(0.2, 0.5).stretches();
        double cv = 1 / 0.65;
        double squares = stretches.stream()
                .mapToDouble(s ->
                        s.speed().derivative().times(s.speed().derivative()).integral(0, s.length()))
                .sum();
        assertThat(stretches.get(0).speed().derivative().at(0)).isCloseTo(cv / 0.2, within(1e-12));
        assertThat(stretches.get(1).speed().at(0)).isCloseTo(cv, within(1e-12));
        assertThat(stretches.get(2).speed().derivative().at(0)).isCloseTo(-cv / 0.5, within(1e-12));
        assertThat(Math.sqrt(squares)).isCloseTo(cv * Math.sqrt(1 / 0.2 + 1 / 0.5), within(1e-12));
    }

    /** M6: 190 m, 305 m/min, 1.22 m/s² both ways; printed 4.17 s, cruise 168.8 m (jiskha.com/questions/2196). */
    @Test
    void trapezoidOfARun() {
        double top = 305 / 60.0;
        double rising = top / 1.22;
        double total = 41.5437;
        List<NormalisedLaw.Stretch> stretches =
                NormalisedLaw.trapezoidal(rising / total, rising / total).stretches();
        NormalisedLaw.Stretch cruise = stretches.get(1);
        assertThat(rising).isCloseTo(4.17, within(0.005));
        assertThat(cruise.speed().at(0) * 190 / total).isCloseTo(top, within(1e-4));
        assertThat(cruise.speed().integral(0, cruise.length()) * 190).isCloseTo(168.8, within(0.05));
        assertThat(stretches.get(0).speed().derivative().at(0) * 190 / (total * total))
                .isCloseTo(1.22, within(1e-4));
    }
}
