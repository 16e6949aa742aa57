package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * Where a polynomial is largest in an interval.
 *
 * @param at the point
 * @param value the value there, with its sign
 */
record Extreme(double at, double value) {

    /** The largest value. */
    static Extreme ofValue(Polynomial polynomial, double from, double to) {
        return search(polynomial, from, to, false);
    }

    /** The value of largest magnitude. */
    static Extreme ofMagnitude(Polynomial polynomial, double from, double to) {
        return search(polynomial, from, to, true);
    }

    double size() {
        return Math.abs(value);
    }

    private static Extreme search(Polynomial polynomial, double from, double to, boolean magnitude) {
        double best = Double.NEGATIVE_INFINITY;
        double at = from;
        for (double t : polynomial.extremalPoints(from, to)) {
            double value = polynomial.at(t);
            double measure = magnitude ? Math.abs(value) : value;
            if (measure > best) {
                best = measure;
                at = t;
            }
        }
        return new Extreme(at, polynomial.at(at));
    }
}
