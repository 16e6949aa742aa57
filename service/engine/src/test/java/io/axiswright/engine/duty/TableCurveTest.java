package io.axiswright.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.axiswright.engine.design.TableInterpolation;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Curves through tables: through the points, never beyond them, without corners. */
class TableCurveTest {

    private static double[][] table(long seed, boolean repeats) {
        SplittableRandom random = new SplittableRandom(seed);
        int count = 3 + random.nextInt(8);
        double[] x = new double[count];
        double[] y = new double[count];
        double place = random.nextDouble() - 3;
        for (int k = 0; k < count; k++) {
            x[k] = place;
            y[k] = random.nextDouble() * 10 - 5;
            place += 0.1 + random.nextDouble();
        }
        if (repeats) {
            y[count - 1] = y[0];
        }
        return new double[][] {x, y};
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void monotoneCubicsStayBetweenTheirPointsAndHaveNoCorners(long seed) {
        boolean repeats = seed % 2 == 0;
        double[][] table = table(seed, repeats);
        double[] x = table[0];
        double[] y = table[1];
        TableCurve curve = TableCurve.of(x, y, TableInterpolation.MONOTONE_CUBIC, repeats);
        for (int k = 1; k < x.length; k++) {
            double step = (x[k] - x[k - 1]) / 100;
            double before = y[k - 1];
            for (int j = 1; j <= 100; j++) {
                double value = curve.at(x[k - 1] + j * step);
                assertThat((value - before) * (y[k] - y[k - 1]))
                        .as("seed " + seed)
                        .isGreaterThan(-1e-9);
                before = value;
            }
            assertThat(curve.at(x[k])).as("seed " + seed).isCloseTo(y[k], within(1e-12));
            if (k < x.length - 1 || repeats) {
                double left = (curve.at(x[k]) - curve.at(x[k] - 1e-7)) / 1e-7;
                double right = (curve.at(x[k] + 1e-7) - curve.at(x[k])) / 1e-7;
                assertThat(left).as("seed " + seed).isCloseTo(right, within(1e-3));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"LINEAR", "MONOTONE_CUBIC"})
    void straightTablesGiveStraightCurves(TableInterpolation interpolation) {
        double[] x = {-1, 0, 0.5, 3, 4};
        double[] y = {-2, 1, 2.5, 10, 13};
        TableCurve curve = TableCurve.of(x, y, interpolation, false);
        for (double place = -1; place <= 4; place += 0.01) {
            assertThat(curve.at(place)).isCloseTo(3 * place + 1, within(1e-12));
        }
        assertThat(curve.at(-7)).isEqualTo(-2);
        assertThat(curve.at(7)).isEqualTo(13);
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12})
    void repeatingTablesRepeat(long seed) {
        double[][] table = table(seed, true);
        TableCurve curve = TableCurve.of(table[0], table[1], TableInterpolation.MONOTONE_CUBIC, true);
        for (double place = -5; place < 5; place += 0.37) {
            assertThat(curve.at(place + 3 * curve.period())).isCloseTo(curve.at(place), within(1e-9));
        }
    }
}
