package io.axiswright.engine.braking;

/**
 * Exact course of the bus energy while the chopper conducts: E' = p(t) − k·E with k = 2/(R·C) and p a polynomial.
 *
 * <p>Its textbook form, particular polynomial plus exponential, divides by powers of k and loses every digit to cancellation
 * when a step is short against 1/k, which is the usual case. The functions φ_n(−z), z = k·t, of exponential integrators have
 * no such flaw: ∫e^(−k·(t−s))·s^j ds over 0 … t is j!·t^(j+1)·φ_(j+1), and integrated once more j!·t^(j+2)·φ_(j+2). The
 * highest that is needed follows from its power series Σ (−z)^j/(j+n)!, each lower one from that series without its first
 * term, φ_n = 1/n! − z·φ_(n+1), which is stable downwards. All derivatives of the energy then follow from the equation itself.
 */
final class ChopperSolution implements Curve {

    /** Up to here a short series has full precision: (1/16)^9·2!/11! is below 1e-18. */
    private static final double SHORT = 1.0 / 16;

    private static final int SHORT_TERMS = 9;

    /** The same up to z = 1: 2!/20! is below 1e-18. */
    private static final int LONG_TERMS = 18;

    /** Steps of this share of the way leave an error of its fourth power. */
    private static final double CLOSE = 1e-4;

    private static final int MOST_STEPS = 200;
    private static final int FEW_STEPS = 3;

    private static final double[] FACTORIALS = factorials();
    private static final double[] INVERSE_FACTORIALS = inverse(FACTORIALS);

    private final double decay;
    private double[] power = {0};
    private double start;

    private double now;
    private double energy;
    private double burned;
    private double rate;
    private double rateSlope;
    private double rateBend;

    /** Solutions for one rate of decay k, 1/s. */
    ChopperSolution(double decay) {
        this.decay = decay;
    }

    private static double[] factorials() {
        double[] factorials = new double[171]; // the last that is finite
        factorials[0] = 1;
        for (int n = 1; n < factorials.length; n++) {
            factorials[n] = n * factorials[n - 1];
        }
        return factorials;
    }

    private static double[] inverse(double[] values) {
        double[] inverse = new double[values.length];
        for (int n = 0; n < values.length; n++) {
            inverse[n] = 1 / values[n];
        }
        return inverse;
    }

    /** The longest step the series is meant for, s. */
    double longestStep() {
        return 1 / decay;
    }

    /**
     * Starts a step, and stands at its start.
     *
     * @param powerFromStart coefficients of the power over the time since the start of the step; not copied
     * @param energyAtStart energy at its start, J
     */
    void begin(double[] powerFromStart, double energyAtStart) {
        power = powerFromStart;
        start = energyAtStart;
        toStart();
    }

    private void toStart() {
        now = 0;
        energy = start;
        burned = 0;
        derive();
    }

    /** Moves to a time since the start of the step, s; at most {@link #longestStep()}. */
    void at(double time) {
        if (time == now) {
            return;
        }
        if (time == 0) {
            toStart();
            return;
        }
        double z = decay * time;
        int highest = power.length + 1;
        double phi = 0;
        for (int j = (z <= SHORT ? SHORT_TERMS : LONG_TERMS) - 1; j >= 0; j--) {
            phi = INVERSE_FACTORIALS[highest + j] - z * phi;
        }
        double come = 0;
        double gone = 0;
        for (int j = power.length - 1; j >= 0; j--) {
            double weight = power[j] * FACTORIALS[j];
            gone = gone * time + weight * phi;
            phi = INVERSE_FACTORIALS[j + 1] - z * phi;
            come = come * time + weight * phi;
        }
        energy = start * (1 - z * phi) + come * time;
        burned = start * z * phi + gone * z * time;
        now = time;
        derive();
    }

    private void derive() {
        double value = 0;
        double slope = 0;
        double half = 0; // half the second derivative
        for (int j = power.length - 1; j >= 0; j--) {
            half = half * now + slope;
            slope = slope * now + value;
            value = value * now + power[j];
        }
        rate = value - decay * energy;
        rateSlope = slope - decay * rate;
        rateBend = 2 * half - decay * rateSlope;
    }

    /** Energy of the bus, J. */
    double energy() {
        return energy;
    }

    /** Energy that went into the resistor since the start of the step, J: the integral of k·E. */
    double burned() {
        return burned;
    }

    /** How fast the energy rises, W. */
    double rate() {
        return rate;
    }

    /**
     * Moves to the time at which the energy, falling all along between two times, reaches a target between its values there.
     * The first guess takes the course at the earlier time as a cubic; each step after it inverts the cubic where it stands
     * (Householder's method of the third order), halving the bracket whenever it would leave it.
     *
     * @return that time, s
     */
    double fallTo(double target, double from, double to) {
        at(from);
        double low = from;
        double high = to;
        double time = inside(from + fallTime(energy - target), low, high);
        for (int step = 0; step < MOST_STEPS; step++) {
            at(time);
            double miss = energy - target;
            if (miss > 0) {
                low = time;
            } else {
                high = time;
            }
            double next = inside(time + step(miss), low, high);
            double move = next - time;
            if (Math.abs(move) <= CLOSE * (next - from) || high - low <= LAST_BIT * high) {
                moveTo(target, next);
                return next;
            }
            time = next;
        }
        return time;
    }

    /**
     * From the start of the step, at which the energy falls: moves straight to the time at which it reaches a target, if that is
     * found at once. Where the energy falls there too it has fallen all along, because it turns at most once.
     *
     * @param latest no later than this, s
     * @return that time, s; NaN, and anywhere in the step, if it takes more care to find
     */
    double fallStraight(double target, double latest) {
        double time = fallTime(energy - target);
        for (int step = 0; step < FEW_STEPS && time > 0 && time <= latest; step++) {
            at(time);
            if (rate >= 0) {
                return Double.NaN;
            }
            double next = time + step(energy - target);
            if (Math.abs(next - time) <= CLOSE * next) {
                if (next > latest) {
                    return Double.NaN;
                }
                moveTo(target, next);
                return next;
            }
            time = next;
        }
        return Double.NaN;
    }

    /** Householder's step of the third order towards the time at which the energy is less by this. */
    private double step(double miss) {
        double perRate = 1 / rate;
        double first = -miss * perRate;
        double second = 0.5 * rateSlope * perRate * first;
        double third = rateBend * perRate * first * first / 6;
        return first * (1 - second + 2 * second * second - third);
    }

    /** To a time close by, at which the energy is known. */
    private void moveTo(double target, double time) {
        double move = time - now;
        burned += decay * move * (energy + move * (rate / 2 + move * rateSlope / 6));
        energy = target;
        now = time;
    }

    /** How long the energy takes to fall by this much, were it a cubic from where it stands; NaN if it never does. */
    private double fallTime(double fall) {
        double time = 2 * fall / (Math.sqrt(rate * rate - 2 * rateSlope * fall) - rate);
        double beyond = time * time * time * rateBend / 6;
        return time - beyond / (rate + time * (rateSlope + time * rateBend / 2));
    }

    private static double inside(double time, double low, double high) {
        return time >= low && time <= high ? time : low + (high - low) / 2;
    }

    @Override
    public double value(double time) {
        at(time);
        return energy;
    }

    @Override
    public double slope(double time) {
        at(time);
        return rate;
    }

    /** The time between two at which the energy, rising before and falling after or the other way round, turns, s. */
    double turn(double from, double to) {
        return Curve.reach(new Rate(), 0, from, to);
    }

    private final class Rate implements Curve {

        @Override
        public double value(double time) {
            at(time);
            return rate;
        }

        @Override
        public double slope(double time) {
            at(time);
            return rateSlope;
        }
    }
}
