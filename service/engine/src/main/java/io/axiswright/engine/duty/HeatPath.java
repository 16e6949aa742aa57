package io.axiswright.engine.duty;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * The bodies through which the heat of a winding flows, as the sum of one or two first-order rises: winding over housing and
 * housing over ambient, each with its share of the steady rise and its own time constant.
 *
 * @param bodies the bodies; their shares add up to 1
 */
record HeatPath(List<Body> bodies) {

    /**
     * One body.
     *
     * @param share its share of the steady rise
     * @param tau its time constant, s
     */
    record Body(double share, double tau) {}

    static HeatPath of(DriveUnit unit) {
        double winding = unit.windingTimeConstant().si();
        return unit.housing() == null
                ? single(winding)
                : new HeatPath(List.of(
                        new Body(1 - unit.housing().riseShare(), winding),
                        new Body(
                                unit.housing().riseShare(),
                                unit.housing().timeConstant().si())));
    }

    static HeatPath single(double tau) {
        return new HeatPath(List.of(new Body(1, tau)));
    }

    /** The rises of all bodies after a time with a steady rise that is a polynomial of the time since its start. */
    double[] after(double[] rises, Polynomial steady, double duration) {
        double[] after = new double[rises.length];
        for (int k = 0; k < after.length; k++) {
            Body body = bodies.get(k);
            after[k] = Decay.after(rises[k], steady.times(body.share), duration, body.tau);
        }
        return after;
    }

    /** The rises at the start of a cycle that repeats, from those at its end when it starts cold. */
    double[] repeating(double[] end, double period) {
        double[] start = new double[end.length];
        for (int k = 0; k < start.length; k++) {
            start[k] = end[k] / -Math.expm1(-period / bodies.get(k).tau);
        }
        return start;
    }

    /** How fast the sum of the rises grows while the steady rise has a value, K/s. */
    double growth(double[] rises, double steady) {
        double growth = 0;
        for (int k = 0; k < rises.length; k++) {
            growth += (bodies.get(k).share * steady - rises[k]) / bodies.get(k).tau;
        }
        return growth;
    }

    /** What the sum cannot exceed within a time in which the steady rise stays below a ceiling. */
    double bound(double[] rises, double ceiling, double duration) {
        double bound = 0;
        for (int k = 0; k < rises.length; k++) {
            Body body = bodies.get(k);
            double gap = Math.max(0, body.share * ceiling - rises[k]);
            bound += rises[k] - Math.expm1(-duration / body.tau) * gap;
        }
        return bound;
    }

    /**
     * A bound of the highest rise over a repeating cycle without running through it. The rise is the loss weighted by
     * e^(−age/tau), and no weight is larger than that of the newest loss: rise ≤ mean·X/(1 − e^(−X)), X = period/tau.
     */
    double bound(double meanSteadyRise, double period) {
        double bound = 0;
        for (Body body : bodies) {
            double x = period / body.tau;
            bound += body.share * meanSteadyRise * x / -Math.expm1(-x);
        }
        return bound;
    }

    /** The rise a time after a steady load sets in on a cold winding. */
    double fromCold(double steady, double time) {
        double rise = 0;
        for (Body body : bodies) {
            rise -= body.share * steady * Math.expm1(-time / body.tau);
        }
        return rise;
    }

    /**
     * How long a steady load heats a cold winding until it is at its limit, s: t = −tau·ln(1 − limit/steady) for one body,
     * by bisection below that of the slowest for two. Infinite if it never is.
     */
    double timeTo(double limit, double steady) {
        if (steady <= limit) {
            return Double.POSITIVE_INFINITY;
        }
        double slowest = bodies.stream().mapToDouble(Body::tau).max().orElse(0);
        double above = -slowest * Math.log1p(-limit / steady);
        double below = bodies.size() == 1 ? above : 0;
        while (true) {
            double middle = (below + above) / 2;
            if (middle <= below || middle >= above) {
                return above;
            }
            if (fromCold(steady, middle) < limit) {
                below = middle;
            } else {
                above = middle;
            }
        }
    }
}
