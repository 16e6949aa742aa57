package io.axiswright.engine.braking;

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
        if (origin == 0) {
            return;
        }
        int last = coefficients.length - 1;
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
}
