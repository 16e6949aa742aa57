package io.axiswright.engine.braking;

/**
 * Exact course of the bus energy while the chopper conducts: E' = p(t) − k·E with k = 2/(R·C) and p a polynomial.
 *
 * <p>Its textbook form, particular polynomial plus exponential, divides by powers of k and loses every digit to cancellation
 * when a step is short against 1/k, which is the usual case. The same function written as its power series has no such flaw:
 * with x = time/length the coefficients follow from c(n+1) = length·(p(n) − k·c(n))/(n+1), and for k·length ≤ 1 they die out
 * faster than 1/n!, so that some twenty give full precision. As a {@link Curve} it is the energy in J over x from 0 to 1.
 */
final class ChopperSolution implements Curve {

    private static final double NEGLIGIBLE = 1e-18;

    private final double decay;
    private final Curve rate = new Rate();
    private double[] series = new double[64];
    private int terms;
    private double length;

    /** Solutions for one rate of decay k, 1/s. */
    ChopperSolution(double decay) {
        this.decay = decay;
    }

    /** The longest step the series is meant for, s. */
    double longestStep() {
        return 1 / decay;
    }

    /**
     * Starts a step.
     *
     * @param power coefficients of the power over the time since the start of the step
     * @param start energy at its start, J
     * @param stepLength how long it may last, s; at most {@link #longestStep()}
     */
    void begin(double[] power, double start, double stepLength) {
        length = stepLength;
        if (series.length < power.length + 40) {
            series = new double[power.length + 40];
        }
        series[0] = start;
        double scale = 1;
        terms = 1;
        while (terms < series.length) {
            double forcing = terms <= power.length ? power[terms - 1] * scale : 0;
            double next = length * (forcing - decay * series[terms - 1]) / terms;
            series[terms++] = next;
            scale *= length;
            if (terms > power.length + 1 && Math.abs(next) <= NEGLIGIBLE * start) {
                break;
            }
        }
    }

    /** How long the step may last, s. */
    double length() {
        return length;
    }

    @Override
    public double value(double x) {
        double value = 0;
        for (int n = terms - 1; n >= 0; n--) {
            value = value * x + series[n];
        }
        return value;
    }

    @Override
    public double slope(double x) {
        double value = 0;
        for (int n = terms - 1; n >= 1; n--) {
            value = value * x + n * series[n];
        }
        return value;
    }

    /** The slope as a curve of its own, to find the turning point. */
    Curve rate() {
        return rate;
    }

    /** Energy that went into the resistor from 0 to x, J: the integral of k·E. */
    double burned(double x) {
        double sum = 0;
        for (int n = terms - 1; n >= 0; n--) {
            sum = sum * x + series[n] / (n + 1);
        }
        return decay * length * sum * x;
    }

    private final class Rate implements Curve {

        @Override
        public double value(double x) {
            return ChopperSolution.this.slope(x);
        }

        @Override
        public double slope(double x) {
            double value = 0;
            for (int n = terms - 1; n >= 2; n--) {
                value = value * x + n * (n - 1) * series[n];
            }
            return value;
        }
    }
}
