package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.Polynomial;

/** Bare coefficient arrays, lowest power first, where the event loop cannot afford an object for every step. */
final class Horner {

    private Horner() {}

    /** The value at t. */
    static double at(double[] coefficients, double t) {
        double value = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            value = value * t + coefficients[k];
        }
        return value;
    }

    /** Turns c(t) into c(t + origin) in place (repeated synthetic division). */
    static void shift(double[] coefficients, double origin) {
        shift(coefficients, coefficients.length, origin);
    }

    /** The same for a polynomial of only the first so many coefficients. */
    static void shift(double[] coefficients, int length, double origin) {
        if (origin == 0) {
            return;
        }
        int last = length - 1;
        for (int row = 0; row < last; row++) {
            for (int k = last - 1; k >= row; k--) {
                coefficients[k] += origin * coefficients[k + 1];
            }
        }
    }

    /** The antiderivative that is 0 at t = 0. */
    static double[] antiderivative(double[] coefficients) {
        double[] sum = new double[coefficients.length + 1];
        for (int k = 0; k < coefficients.length; k++) {
            sum[k + 1] = coefficients[k] / (k + 1);
        }
        return sum;
    }

    /** The derivative; of a constant, 0. */
    static double[] derivative(double[] coefficients) {
        double[] slope = new double[Math.max(1, coefficients.length - 1)];
        for (int k = 1; k < coefficients.length; k++) {
            slope[k - 1] = k * coefficients[k];
        }
        return slope;
    }

    /** An upper bound of the magnitude between two arguments: |value in the middle| and all that can be added to it. */
    static double largestMagnitude(double[] coefficients, double from, double to) {
        double[] centred = coefficients.clone();
        shift(centred, (from + to) / 2);
        double reach = (to - from) / 2;
        double sum = 0;
        for (int k = centred.length - 1; k >= 0; k--) {
            sum = sum * reach + Math.abs(centred[k]);
        }
        return sum;
    }

    /** A copy of a polynomial's coefficients. */
    static double[] coefficients(Polynomial polynomial) {
        double[] coefficients = new double[polynomial.degree() + 1];
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] = polynomial.coefficient(k);
        }
        return coefficients;
    }

    /** A polynomial as a curve. */
    record Graph(double[] coefficients) implements Curve {

        @Override
        public double value(double x) {
            return at(coefficients, x);
        }

        @Override
        public double slope(double x) {
            double value = 0;
            for (int k = coefficients.length - 1; k >= 1; k--) {
                value = value * x + k * coefficients[k];
            }
            return value;
        }
    }
}
