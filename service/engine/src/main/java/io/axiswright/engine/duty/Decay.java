package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * A body that heats and cools through one thermal resistance: tau·y' = g − y with a polynomial g.
 *
 * <p>y(h) = y(0)·e^(−x) + x·sum of g_k·h^k·M_k with x = h/tau and M_k = integral over u from 0 to 1 of u^k·e^(−x(1−u)).
 * The moments obey x·M_k = 1 − k·M_(k−1); run upwards the recursion is stable for large x, downwards for small x, so that
 * pieces far shorter than tau lose no digits (the textbook particular solution g − tau·g' + tau²·g'' … loses all of them).
 */
final class Decay {

    private Decay() {}

    /**
     * The state after a time.
     *
     * @param state the state before
     * @param drive g over the time since then
     * @param duration the time, not negative
     * @param tau time constant, above 0
     */
    static double after(double state, Polynomial drive, double duration, double tau) {
        double x = duration / tau;
        double[] moments = moments(drive.degree(), x);
        double sum = 0;
        for (int k = drive.degree(); k >= 0; k--) {
            sum = sum * duration + drive.coefficient(k) * moments[k];
        }
        return state * Math.exp(-x) + x * sum;
    }

    /** M_0 … M_degree. */
    static double[] moments(int degree, double x) {
        double[] moments = new double[degree + 1];
        if (x > degree + 2) {
            moments[0] = -Math.expm1(-x) / x;
            for (int k = 1; k <= degree; k++) {
                moments[k] = (1 - k * moments[k - 1]) / x;
            }
        } else {
            moments[degree] = series(degree, x);
            for (int k = degree; k > 0; k--) {
                moments[k - 1] = (1 - x * moments[k]) / k;
            }
        }
        return moments;
    }

    /** M_k = sum over j of (−x)^j/((k+1)(k+2)…(k+1+j)); the terms fall from the first when x is at most k + 2. */
    private static double series(int k, double x) {
        double term = 1.0 / (k + 1);
        double sum = term;
        for (int j = 1; Math.abs(term) > 1e-17 * sum; j++) {
            term *= -x / (k + 1 + j);
            sum += term;
        }
        return sum;
    }
}
