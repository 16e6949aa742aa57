package io.axiswright.engine.duty;

import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.numeric.Polynomial;

/**
 * A curve through the points of a table; level beyond its ends, or repeating.
 *
 * @param x places of the points, rising
 * @param y values there
 * @param slope slopes there of the cubic curve; empty for straight lines
 * @param repeats whether the last point is the first of the next turn
 */
record TableCurve(double[] x, double[] y, double[] slope, boolean repeats) {

    static TableCurve of(double[] x, double[] y, TableInterpolation interpolation, boolean repeats) {
        return switch (interpolation) {
            case LINEAR -> new TableCurve(x, y, new double[0], repeats);
            case MONOTONE_CUBIC -> new TableCurve(x, y, MonotoneSlopes.of(x, y, repeats), repeats);
        };
    }

    /** The curve between two points of the table, as a polynomial over the distance from an origin. */
    record Stretch(double origin, Polynomial value) {

        double at(double place) {
            return value.at(place - origin);
        }

        Polynomial slope() {
            return value.derivative();
        }
    }

    double period() {
        return x[x.length - 1] - x[0];
    }

    double at(double place) {
        return around(place).at(place);
    }

    /** The stretch a place lies in. */
    Stretch around(double place) {
        double turn = repeats ? Math.floor((place - x[0]) / period()) * period() : 0;
        double inside = place - turn;
        if (inside < x[0]) {
            return new Stretch(x[0], Polynomial.of(y[0]));
        }
        if (inside > x[x.length - 1]) {
            return new Stretch(x[x.length - 1], Polynomial.of(y[x.length - 1]));
        }
        int k = interval(inside);
        double h = x[k + 1] - x[k];
        double chord = (y[k + 1] - y[k]) / h;
        Polynomial value = slope.length == 0
                ? Polynomial.of(y[k], chord)
                : Polynomial.of(
                        y[k],
                        slope[k],
                        (3 * chord - 2 * slope[k] - slope[k + 1]) / h,
                        (slope[k] + slope[k + 1] - 2 * chord) / (h * h));
        return new Stretch(x[k] + turn, value);
    }

    private int interval(double place) {
        int low = 0;
        int high = x.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= place) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
