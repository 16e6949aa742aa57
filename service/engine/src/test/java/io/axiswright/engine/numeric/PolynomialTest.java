package io.axiswright.engine.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialsUtils;
import org.junit.jupiter.api.Test;

class PolynomialTest {

    @Test
    void agreesWithAGeneralPurposeLibrary() {
        var random = new SplittableRandom(11);
        for (int run = 0; run < 500; run++) {
            double[] a = coefficients(random);
            double[] b = coefficients(random);
            double t = random.nextDouble(-2, 2);
            double s = random.nextDouble(-2, 2);
            Polynomial p = Polynomial.of(a);
            Polynomial q = Polynomial.of(b);
            var pf = new PolynomialFunction(a);
            var qf = new PolynomialFunction(b);
            assertThat(p.at(t)).as("run %d", run).isCloseTo(pf.value(t), within(1e-11));
            assertThat(p.times(q).at(t))
                    .as("run %d", run)
                    .isCloseTo(pf.multiply(qf).value(t), within(1e-9));
            assertThat(p.minus(q).at(t))
                    .as("run %d", run)
                    .isCloseTo(pf.subtract(qf).value(t), within(1e-10));
            assertThat(p.derivative().at(t))
                    .as("run %d", run)
                    .isCloseTo(pf.polynomialDerivative().value(t), within(1e-10));
            assertThat(p.integral(s, t))
                    .as("run %d", run)
                    .isCloseTo(Math.signum(t - s) * pf.integrate(Math.min(s, t), Math.max(s, t)), within(1e-10));
            assertThat(p.shifted(s).at(t))
                    .as("run %d", run)
                    .isCloseTo(new PolynomialFunction(PolynomialsUtils.shift(a, s)).value(t), within(1e-8));
        }
    }

    @Test
    void findsEverySignChangeOfAProductOfLinearFactors() {
        var random = new SplittableRandom(12);
        for (int run = 0; run < 500; run++) {
            double[] roots = random.doubles(5, 0.1, 0.9).sorted().toArray();
            Polynomial p = Polynomial.of(1);
            for (double root : roots) {
                p = p.times(Polynomial.of(-root, 1));
            }
            var found = p.signChanges(0, 1);
            // roots closer than the polynomial can tell apart in double precision may merge in pairs
            boolean wellApart = true;
            for (int k = 1; k < roots.length; k++) {
                wellApart &= roots[k] - roots[k - 1] > 1e-2;
            }
            if (wellApart) {
                assertThat(found).as("run %d", run).hasSize(5);
                for (int k = 0; k < 5; k++) {
                    assertThat(found[k]).as("run %d", run).isCloseTo(roots[k], within(1e-7));
                }
            }
        }
    }

    @Test
    void touchingZeroIsNoSignChange() {
        Polynomial square = Polynomial.of(-0.5, 1).times(Polynomial.of(-0.5, 1));
        assertThat(square.signChanges(0, 1)).isEmpty();
        assertThat(square.extremalPoints(0, 1)).hasSize(3);
    }

    @Test
    void aRootExactlyOnATurningPointOfTheDerivativeIsFoundOnce() {
        // t³ crosses 0 with a horizontal tangent
        assertThat(Polynomial.of(0, 0, 0, 1).signChanges(-1, 1)).hasSize(1);
    }

    private static double[] coefficients(SplittableRandom random) {
        return random.doubles(random.nextInt(1, 7), -3, 3).toArray();
    }
}
