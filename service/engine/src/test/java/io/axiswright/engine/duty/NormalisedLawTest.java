package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coefficients of the motion laws against the table of normalised coefficients (numerical double integration of each
 * acceleration function; peaks of the 3-4-5 polynomial agree with Norton, Cam Design and Manufacturing Handbook, and VDI
 * 2143, both from memory) and its closed forms.
 */
class NormalisedLawTest {

    /** A law with its printed Cv, Ca, Cj (infinite: jumps of acceleration), Crms and Cp. */
    record Row(MotionLaw law, double cv, double ca, double cj, double crms, double cvrms, double cp) {}

    static Stream<Row> table() {
        double jump = Double.POSITIVE_INFINITY;
        return Stream.of(
                new Row(new Triangular(), 2, 4, jump, 4, 1.1547, 8),
                new Row(new Trapezoidal(1 / 3.0, 1 / 3.0), 1.5, 4.5, jump, 3.6742, 1.1180, 6.75),
                new Row(new Trapezoidal(0.25, 0.25), 1.3333, 5.3333, jump, 3.7712, 1.0887, 7.1111),
                new Row(new Polynomial345(), 1.875, 5.7735, 60, 4.1404, 1.1952, 6.6943),
                new Row(new SCurve(1 / 3.0, 0.25), 1.5, 5.1429, 123.4286, 3.8333, 1.1310, 7.1632),
                new Row(new SCurve(1 / 3.0, 0.5), 1.5, 6, 72, 4, 1.1414, 7.4999),
                new Row(new SCurve(1 / 3.0, 0.75), 1.5, 7.2, 57.6, 4.1569, 1.1485, 7.56),
                new Row(new SCurve(1 / 3.0, 1), 1.5, 9, 54, 4.2426, 1.1511, 7.3485),
                new Row(new SCurve(0.5, 0.25), 2, 4.5714, 73.1429, 4.1731, 1.1878, 8.4898),
                new Row(new SCurve(0.5, 0.5), 2, 5.3333, 42.6667, 4.3546, 1.2141, 8.8888),
                new Row(new SCurve(0.5, 0.75), 2, 6.4, 34.1333, 4.5255, 1.2318, 8.96),
                new Row(new SCurve(0.5, 1), 2, 8, 32, 4.6188, 1.2383, 8.7093));
    }

    @ParameterizedTest
    @MethodSource("table")
    void coefficientsAreThoseOfTheTable(Row row) {
        List<NormalisedLaw.Stretch> stretches = NormalisedLaw.of(row.law).stretches();
        double cv = 0;
        double ca = 0;
        double cj = 0;
        double cp = 0;
        double squares = 0;
        double speedSquares = 0;
        double distance = 0;
        double before = 0;
        for (NormalisedLaw.Stretch stretch : stretches) {
            Polynomial speed = stretch.speed();
            Polynomial acceleration = speed.derivative();
            double end = stretch.length();
            cv = Math.max(cv, Extreme.ofMagnitude(speed, 0, end).size());
            ca = Math.max(ca, Extreme.ofMagnitude(acceleration, 0, end).size());
            cp = Math.max(cp, Extreme.ofValue(speed.times(acceleration), 0, end).value());
            cj = Math.abs(acceleration.at(0) - before) > 1e-9
                    ? Double.POSITIVE_INFINITY
                    : Math.max(
                            cj,
                            Extreme.ofMagnitude(acceleration.derivative(), 0, end)
                                    .size());
            squares += acceleration.times(acceleration).integral(0, end);
            speedSquares += speed.times(speed).integral(0, end);
            distance += speed.integral(0, end);
            before = acceleration.at(end);
        }
        assertThat(cv).isCloseTo(row.cv, within(5.1e-5));
        assertThat(ca).isCloseTo(row.ca, within(5.1e-5));
        if (Double.isFinite(row.cj)) {
            assertThat(cj).isCloseTo(row.cj, within(5.1e-5));
        } else {
            assertThat(cj).isInfinite();
        }
        assertThat(Math.sqrt(squares)).isCloseTo(row.crms, within(5.1e-5));
        assertThat(Math.sqrt(speedSquares)).isCloseTo(row.cvrms, within(5.1e-5));
        assertThat(cp).isCloseTo(row.cp, within(1.1e-4));
        assertThat(distance).isCloseTo(1, within(1e-12));
        assertThat(stretches.getLast().speed().at(stretches.getLast().length())).isCloseTo(0, within(1e-12));
    }

    /** Closed forms for unequal shares: Cv = 1/(1 − (b1+b2)/2), a1 = Cv/b1, a2 = Cv/b2, Crms = Cv·sqrt(1/b1 + 1/b2). */
    @Test
    void trapezoidOfUnequalShares() {
        List<NormalisedLaw.Stretch> stretches =
                NormalisedLaw.of(new Trapezoidal(0.2, 0.5)).stretches();
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
        List<NormalisedLaw.Stretch> stretches = NormalisedLaw.of(new Trapezoidal(rising / total, rising / total))
                .stretches();
        NormalisedLaw.Stretch cruise = stretches.get(1);
        assertThat(rising).isCloseTo(4.17, within(0.005));
        assertThat(cruise.speed().at(0) * 190 / total).isCloseTo(top, within(1e-4));
        assertThat(cruise.speed().integral(0, cruise.length()) * 190).isCloseTo(168.8, within(0.05));
        assertThat(stretches.get(0).speed().derivative().at(0) * 190 / (total * total))
                .isCloseTo(1.22, within(1e-4));
    }
}
