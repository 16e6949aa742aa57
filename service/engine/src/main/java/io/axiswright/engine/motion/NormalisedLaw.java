package io.axiswright.engine.motion;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.numeric.PolynomialPieces;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * A motion law as exact polynomial stretches: distance 1 in time 1, from rest to rest (the normalised form of VDI 2143).
 * Sine laws are polynomials to 1e-12 of their peak acceleration.
 *
 * @param stretches the stretches, end to end over the time from 0 to 1
 * @param topSpeed Cv: top speed over distance per time
 * @param acceleration Ca: highest acceleration over distance per time squared
 * @param deceleration the same of the deceleration
 * @param jerk Cj: highest jerk over distance per time cubed; infinite where the acceleration jumps
 */
record NormalisedLaw(List<Stretch> stretches, double topSpeed, double acceleration, double deceleration, double jerk) {

    /** Shorter stretches than this share of the move are rounding, not motion. */
    private static final double SHORTEST = 1e-12;

    /** Largest error of an acceleration taken as a polynomial, as a share of its peak. */
    private static final double TOLERANCE = 1e-12;

    /** Accelerations that differ by less than this share of the peak meet without a jump. */
    private static final double JUMP = 1e-9;

    static final NormalisedLaw POLYNOMIAL_345 = join(new Phase(1, Polynomial.of(0, 60, -180, 120)));

    /** a = 420·u²·(1 − u)²·(1 − 2u). */
    static final NormalisedLaw POLYNOMIAL_4567 = join(new Phase(1, Polynomial.of(0, 0, 420, -1680, 2100, -840)));

    static final NormalisedLaw SIMPLE_HARMONIC =
            smooth(u -> Math.PI * Math.PI / 2 * Math.cos(Math.PI * u), Math.PI * Math.PI / 2, 0, 1);

    static final NormalisedLaw CYCLOIDAL = smooth(u -> 2 * Math.PI * Math.sin(2 * Math.PI * u), 2 * Math.PI, 0, 1);

    static final NormalisedLaw MODIFIED_SINE = modifiedSine();

    static final NormalisedLaw MODIFIED_TRAPEZOID = modifiedTrapezoid();

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

    /** Top speed 1/(1 − (b1 + b2)/2) is what covers distance 1. */
    static NormalisedLaw trapezoidal(double rising, double falling) {
        double top = 1 / (1 - (rising + falling) / 2);
        return join(
                constant(rising, top / rising), constant(1 - rising - falling, 0), constant(falling, -top / falling));
    }

    /** Seven phases; the two ramps of an acceleration phase take the jerk share of it together. */
    static NormalisedLaw sCurve(double share, double jerkShare) {
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

    private static NormalisedLaw of(List<Stretch> stretches) {
        double acceleration = largest(stretches, Polynomial::derivative, 1);
        double deceleration = largest(stretches, Polynomial::derivative, -1);
        return new NormalisedLaw(
                List.copyOf(stretches),
                largest(stretches, speed -> speed, 1),
                acceleration,
                deceleration,
                jerk(stretches, JUMP * Math.max(acceleration, deceleration)));
    }

    /** The highest jerk of accelerations whose jumps, if any, are no larger than what is rounding. */
    private static double jerk(List<Stretch> stretches, double rounding) {
        double before = 0;
        for (Stretch stretch : stretches) {
            Polynomial acceleration = stretch.speed.derivative();
            if (Math.abs(acceleration.at(0) - before) > rounding) {
                return Double.POSITIVE_INFINITY;
            }
            before = acceleration.at(stretch.length);
        }
        if (Math.abs(before) > rounding) {
            return Double.POSITIVE_INFINITY;
        }
        UnaryOperator<Polynomial> jerk = speed -> speed.derivative().derivative();
        return Math.max(largest(stretches, jerk, 1), largest(stretches, jerk, -1));
    }

    private static double largest(List<Stretch> stretches, UnaryOperator<Polynomial> course, double sign) {
        double largest = 0;
        for (Stretch stretch : stretches) {
            Polynomial polynomial = course.apply(stretch.speed);
            for (double u : polynomial.extremalPoints(0, stretch.length)) {
                largest = Math.max(largest, sign * polynomial.at(u));
            }
        }
        return largest;
    }

    /** a = Ca·sin(4·pi·u) to 1/8, Ca·sin((4·pi·u + pi)/3) to 7/8, Ca·sin(4·pi·u − 2·pi) to 1, Ca = 4·pi²/(4 + pi). */
    private static NormalisedLaw modifiedSine() {
        double peak = 4 * Math.PI * Math.PI / (4 + Math.PI);
        List<Phase> phases = new ArrayList<>();
        phases.addAll(phases(u -> peak * Math.sin(4 * Math.PI * u), peak, 0, 0.125));
        phases.addAll(phases(u -> peak * Math.sin((4 * Math.PI * u + Math.PI) / 3), peak, 0.125, 0.875));
        phases.addAll(phases(u -> peak * Math.sin(4 * Math.PI * u - 2 * Math.PI), peak, 0.875, 1));
        return join(phases.toArray(Phase[]::new));
    }

    /** a = Ca·sin(4·pi·u) to 1/8, Ca to 3/8, Ca·cos(4·pi·(u − 3/8)) to 5/8, −Ca to 7/8, back in a sine; Ca = 8·pi/(2 + pi). */
    private static NormalisedLaw modifiedTrapezoid() {
        double peak = 8 * Math.PI / (2 + Math.PI);
        List<Phase> phases = new ArrayList<>();
        phases.addAll(phases(u -> peak * Math.sin(4 * Math.PI * u), peak, 0, 0.125));
        phases.add(constant(0.25, peak));
        phases.addAll(phases(u -> peak * Math.cos(4 * Math.PI * (u - 0.375)), peak, 0.375, 0.625));
        phases.add(constant(0.25, -peak));
        phases.addAll(phases(u -> -peak * Math.cos(4 * Math.PI * (u - 0.875)), peak, 0.875, 1));
        return join(phases.toArray(Phase[]::new));
    }

    private static NormalisedLaw smooth(DoubleUnaryOperator acceleration, double peak, double from, double to) {
        return join(phases(acceleration, peak, from, to).toArray(Phase[]::new));
    }

    private static List<Phase> phases(DoubleUnaryOperator acceleration, double peak, double from, double to) {
        return PolynomialPieces.of(acceleration, from, to, TOLERANCE * peak).stream()
                .map(piece -> new Phase(piece.length(), piece.polynomial()))
                .toList();
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
        return of(stretches);
    }
}
