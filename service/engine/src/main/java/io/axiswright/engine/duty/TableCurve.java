package io.axiswright.engine.duty;

import io.axiswright.engine.design.TableInterpolation;
import io.axiswright.engine.numeric.Enclosure;
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

    /** The curve over a range of places. */
    Enclosure value(Enclosure place) {
        return through(place, Polynomial::at, (value, at) -> value.derivative().at(at));
    }

    /** Its slope over a range of places; where that jumps, nothing is known of how the slope changes. */
    Enclosure slope(Enclosure place) {
        Enclosure slope = through(
                place,
                (value, at) -> value.derivative().at(at),
                (value, at) -> value.derivative().derivative().at(at));
        boolean jumps = slope.low() < slope.high() && (this.slope.length == 0 || passesEnd(place));
        return jumps
                ? place.through(slope.low(), slope.high(), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
                : slope;
    }

    private boolean passesEnd(Enclosure place) {
        return !repeats && (place.low() < x[0] || place.high() > x[x.length - 1]);
    }

    /** What of a stretch is wanted at a distance from its origin. */
    private interface Reading {

        double at(Polynomial value, double place);
    }

    /** Cubics have their extremes at ends, at the vertex of their slope, or, being monotone, nowhere else. */
    private Enclosure through(Enclosure place, Reading value, Reading slope) {
        if (repeats && place.high() - place.low() >= period()) {
            return through(new Enclosure(x[0], Math.nextDown(x[x.length - 1]), place.byX(), place.byY()), value, slope);
        }
        double[] bounds = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        double from = place.low();
        while (true) {
            Stretch stretch = around(from);
            double end = Math.min(place.high(), end(from));
            double vertex = vertex(stretch);
            for (double at : new double[] {from, end, Math.clamp(vertex, from, Math.max(from, end))}) {
                double here = value.at(stretch.value(), at - stretch.origin());
                double steep = slope.at(stretch.value(), at - stretch.origin());
                bounds[0] = Math.min(bounds[0], here);
                bounds[1] = Math.max(bounds[1], here);
                bounds[2] = Math.min(bounds[2], steep);
                bounds[3] = Math.max(bounds[3], steep);
            }
            if (end >= place.high()) {
                return place.through(bounds[0], bounds[1], bounds[2], bounds[3]);
            }
            from = end;
        }
    }

    /** Where the slope of a stretch is steepest or flattest; somewhere if it is straight. */
    private static double vertex(Stretch stretch) {
        double third = stretch.value().coefficient(3);
        return third == 0
                ? stretch.origin()
                : stretch.origin() - stretch.value().coefficient(2) / (3 * third);
    }

    /** Where the stretch ends that a place lies in. */
    private double end(double place) {
        double turn = repeats ? Math.floor((place - x[0]) / period()) * period() : 0;
        double inside = place - turn;
        if (inside < x[0]) {
            return Math.max(x[0] + turn, Math.nextUp(place));
        }
        if (inside >= x[x.length - 1]) {
            return repeats ? Math.nextUp(place) : Double.POSITIVE_INFINITY;
        }
        return Math.max(x[interval(inside) + 1] + turn, Math.nextUp(place));
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
