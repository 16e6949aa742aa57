package io.axiswright.engine.motion;

import io.axiswright.engine.design.Interpolation;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * Splines through positions over time, as the polynomials of speed between them. Both go by the speeds (and accelerations) at
 * the points that make the next derivatives meet; the times are scaled to a mean step of 1, which keeps the equations tame.
 */
final class Spline {

    private final double[] steps;
    private final double[] rises;
    private final double scale;

    private Spline(double[] times, double[] positions) {
        int count = times.length - 1;
        scale = (times[count] - times[0]) / count;
        steps = new double[count];
        rises = new double[count];
        for (int k = 0; k < count; k++) {
            steps[k] = (times[k + 1] - times[k]) / scale;
            rises[k] = positions[k + 1] - positions[k];
        }
    }

    /** The speeds between the points, each over the time since its start. */
    static List<Polynomial> speeds(
            Interpolation interpolation, double[] times, double[] positions, double startSpeed, double endSpeed) {
        Spline spline = new Spline(times, positions);
        double from = startSpeed * spline.scale;
        double to = endSpeed * spline.scale;
        return switch (interpolation) {
            case CUBIC_SPLINE -> spline.cubic(from, to);
            case QUINTIC_SPLINE -> spline.quintic(from, to);
        };
    }

    /** Accelerations meet where v(k−1)/h1 + 2·v(k)·(1/h1 + 1/h2) + v(k+1)/h2 = 3·(d1/h1² + d2/h2²). */
    private List<Polynomial> cubic(double from, double to) {
        int count = steps.length;
        double[] speed = new double[count + 1];
        double[] upper = new double[count + 1];
        speed[0] = from;
        for (int k = 1; k < count; k++) {
            double one = steps[k - 1];
            double two = steps[k];
            double pivot = 2 * (1 / one + 1 / two) - upper[k - 1] / one;
            upper[k] = 1 / two / pivot;
            double right = 3 * (rises[k - 1] / (one * one) + rises[k] / (two * two));
            speed[k] = (right - speed[k - 1] / one) / pivot;
        }
        speed[count] = to;
        for (int k = count - 1; k > 0; k--) {
            speed[k] -= upper[k] * speed[k + 1];
        }
        List<Polynomial> speeds = new ArrayList<>(count);
        for (int k = 0; k < count; k++) {
            double h = steps[k];
            double mean = rises[k] / h;
            double second = (6 * mean - 4 * speed[k] - 2 * speed[k + 1]) / h;
            double third = 3 * (speed[k] + speed[k + 1] - 2 * mean) / (h * h);
            speeds.add(scaled(Polynomial.of(speed[k], second, third)));
        }
        return speeds;
    }

    /**
     * The third and fourth derivatives of the quintics with given speeds and accelerations at their ends meet. The equations
     * of a point hold two unknowns, its speed and acceleration, and those of both neighbours: elimination by 2 × 2 blocks.
     */
    private List<Polynomial> quintic(double from, double to) {
        int count = steps.length;
        Pair[] unknown = new Pair[count + 1];
        Block[] upper = new Block[count + 1];
        unknown[0] = new Pair(from, 0);
        upper[0] = Block.ZERO;
        for (int k = 1; k < count; k++) {
            double one = steps[k - 1];
            double two = steps[k];
            Block before = new Block(-24 / p(one, 2), -3 / one, -168 / p(one, 3), -24 / p(one, 2));
            Block here = new Block(
                    -36 / p(one, 2) + 36 / p(two, 2),
                    9 / one + 9 / two,
                    -192 / p(one, 3) - 192 / p(two, 3),
                    36 / p(one, 2) - 36 / p(two, 2));
            Block after = new Block(24 / p(two, 2), -3 / two, -168 / p(two, 3), 24 / p(two, 2));
            Pair right = new Pair(
                    60 * (rises[k] / p(two, 3) - rises[k - 1] / p(one, 3)),
                    -360 * (rises[k] / p(two, 4) + rises[k - 1] / p(one, 4)));
            Block pivot = here.minus(before.times(upper[k - 1])).inverse();
            upper[k] = pivot.times(after);
            unknown[k] = pivot.times(right.minus(before.times(unknown[k - 1])));
        }
        unknown[count] = new Pair(to, 0);
        for (int k = count - 1; k > 0; k--) {
            unknown[k] = unknown[k].minus(upper[k].times(unknown[k + 1]));
        }
        List<Polynomial> speeds = new ArrayList<>(count);
        for (int k = 0; k < count; k++) {
            speeds.add(scaled(quintic(steps[k], rises[k], unknown[k], unknown[k + 1])));
        }
        return speeds;
    }

    /** The speed of the quintic with given speeds and accelerations at both ends. */
    private static Polynomial quintic(double h, double rise, Pair from, Pair to) {
        double third = (20 * rise - (8 * to.first + 12 * from.first) * h - (3 * from.second - to.second) * h * h)
                / (2 * p(h, 3));
        double fourth = (-30 * rise + (14 * to.first + 16 * from.first) * h + (3 * from.second - 2 * to.second) * h * h)
                / (2 * p(h, 4));
        double fifth =
                (12 * rise - 6 * (to.first + from.first) * h + (to.second - from.second) * h * h) / (2 * p(h, 5));
        return Polynomial.of(from.first, from.second, 3 * third, 4 * fourth, 5 * fifth);
    }

    private Polynomial scaled(Polynomial speed) {
        return speed.times(1 / scale).stretched(scale);
    }

    private static double p(double base, int exponent) {
        return Math.pow(base, exponent);
    }

    private record Pair(double first, double second) {

        Pair minus(Pair other) {
            return new Pair(first - other.first, second - other.second);
        }
    }

    /** A 2 × 2 matrix, by rows. */
    private record Block(double a, double b, double c, double d) {

        static final Block ZERO = new Block(0, 0, 0, 0);

        Block minus(Block other) {
            return new Block(a - other.a, b - other.b, c - other.c, d - other.d);
        }

        Block times(Block other) {
            return new Block(
                    a * other.a + b * other.c,
                    a * other.b + b * other.d,
                    c * other.a + d * other.c,
                    c * other.b + d * other.d);
        }

        Pair times(Pair pair) {
            return new Pair(a * pair.first + b * pair.second, c * pair.first + d * pair.second);
        }

        Block inverse() {
            double determinant = a * d - b * c;
            return new Block(d / determinant, -b / determinant, -c / determinant, a / determinant);
        }
    }
}
