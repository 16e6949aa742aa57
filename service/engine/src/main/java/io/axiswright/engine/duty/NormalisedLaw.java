package io.axiswright.engine.duty;

import io.axiswright.engine.design.MotionLaw;
import io.axiswright.engine.design.Polynomial345;
import io.axiswright.engine.design.SCurve;
import io.axiswright.engine.design.Trapezoidal;
import io.axiswright.engine.design.Triangular;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * A motion law as exact polynomial stretches: distance 1 in time 1, from rest to rest (the normalised form of VDI 2143).
 *
 * @param stretches the stretches, end to end over the time from 0 to 1
 */
record NormalisedLaw(List<Stretch> stretches) {

    /** Shorter stretches than this share of the move are rounding, not motion. */
    private static final double SHORTEST = 1e-12;

    /**
     * A stretch over which the speed is one polynomial.
     *
     * @param start when it starts, as a share of the move
     * @param length how long it lasts, as a share of the move
     * @param speed normalised speed over the share of time since its start
     */
    record Stretch(double start, double length, Polynomial speed) {}

    /** A law is known by its accelerations; speeds follow by integration. */
    private record Phase(double length, Polynomial acceleration) {}

    /** The one place that knows every law. */
    static NormalisedLaw of(MotionLaw law) {
        return switch (law) {
            case Trapezoidal trapezoid -> trapezoidal(trapezoid.accelerationShare(), trapezoid.decelerationShare());
            case Triangular triangle -> trapezoidal(0.5, 0.5);
            case SCurve curve -> sCurve(curve.accelerationShare(), curve.jerkShare());
            case Polynomial345 polynomial -> join(new Phase(1, Polynomial.of(0, 60, -180, 120)));
        };
    }

    /** Top speed 1/(1 − (b1 + b2)/2) is what covers distance 1. */
    private static NormalisedLaw trapezoidal(double rising, double falling) {
        double top = 1 / (1 - (rising + falling) / 2);
        return join(
                constant(rising, top / rising), constant(1 - rising - falling, 0), constant(falling, -top / falling));
    }

    /** Seven phases; the two ramps of an acceleration phase take the jerk share of it together. */
    private static NormalisedLaw sCurve(double share, double jerkShare) {
        double top = 1 / (1 - share);
        double steepest = top / (share * (1 - jerkShare / 2));
        double ramp = share * jerkShare / 2;
        double steady = share * (1 - jerkShare);
        return join(
                new Phase(ramp, Polynomial.of(0, steepest / ramp)),
                constant(steady, steepest),
                new Phase(ramp, Polynomial.of(steepest, -steepest / ramp)),
                constant(1 - 2 * share, 0),
                new Phase(ramp, Polynomial.of(0, -steepest / ramp)),
                constant(steady, -steepest),
                new Phase(ramp, Polynomial.of(-steepest, steepest / ramp)));
    }

    private static Phase constant(double length, double acceleration) {
        return new Phase(length, Polynomial.of(acceleration));
    }

    private static NormalisedLaw join(Phase... phases) {
        List<Stretch> stretches = new ArrayList<>(phases.length);
        double start = 0;
        double speed = 0;
        for (Phase phase : phases) {
            if (phase.length < SHORTEST) {
                continue;
            }
            Polynomial course = phase.acceleration.antiderivative().plus(speed);
            stretches.add(new Stretch(start, phase.length, course));
            start += phase.length;
            speed = course.at(phase.length);
        }
        return new NormalisedLaw(stretches);
    }
}
