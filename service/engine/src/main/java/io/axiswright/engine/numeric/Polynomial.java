package io.axiswright.engine.numeric;

import java.util.Arrays;

/** A polynomial with real coefficients, lowest power first; immutable. */
public final class Polynomial {

    /** The polynomial that is 0 everywhere. */
    public static final Polynomial ZERO = new Polynomial(0);

    private static final double[] NONE = {};

    /** Numbers nearer to each other than this share of them are neighbours. */
    private static final double LAST_BIT = Math.ulp(1.0);

    /** Enough steps for any root of odd multiplicity to settle. */
    private static final int MOST_STEPS = 200;

    private final double[] coefficients;

    /** Keeps the array given, which nobody else may then change. */
    private Polynomial(double... coefficients) {
        int length = coefficients.length;
        while (length > 1 && coefficients[length - 1] == 0) {
            length--;
        }
        this.coefficients = length == coefficients.length ? coefficients : Arrays.copyOf(coefficients, length);
    }

    /** The polynomial c0 + c1·t + c2·t² …; at least one coefficient. */
    public static Polynomial of(double... coefficients) {
        return new Polynomial(coefficients.clone());
    }

    /** The highest power with a coefficient other than 0; 0 for constants. */
    public int degree() {
        return coefficients.length - 1;
    }

    /** The coefficient of t^power; 0 above the degree. */
    public double coefficient(int power) {
        return power < coefficients.length ? coefficients[power] : 0;
    }

    /** The value at t (Horner's scheme). */
    public double at(double t) {
        double value = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            value = value * t + coefficients[k];
        }
        return value;
    }

    /** The sum with another polynomial. */
    public Polynomial plus(Polynomial other) {
        double[] sum = new double[Math.max(coefficients.length, other.coefficients.length)];
        for (int k = 0; k < sum.length; k++) {
            sum[k] = coefficient(k) + other.coefficient(k);
        }
        return new Polynomial(sum);
    }

    /** The sum with a constant. */
    public Polynomial plus(double constant) {
        double[] sum = coefficients.clone();
        sum[0] += constant;
        return new Polynomial(sum);
    }

    /** The difference from another polynomial. */
    public Polynomial minus(Polynomial other) {
        return plus(other.times(-1));
    }

    /** The product with a number. */
    public Polynomial times(double factor) {
        if (factor == 1) {
            return this;
        }
        double[] scaled = coefficients.clone();
        for (int k = 0; k < scaled.length; k++) {
            scaled[k] *= factor;
        }
        return new Polynomial(scaled);
    }

    /** The product with another polynomial. */
    public Polynomial times(Polynomial other) {
        double[] product = new double[coefficients.length + other.coefficients.length - 1];
        for (int j = 0; j < coefficients.length; j++) {
            for (int k = 0; k < other.coefficients.length; k++) {
                product[j + k] += coefficients[j] * other.coefficients[k];
            }
        }
        return new Polynomial(product);
    }

    /** The derivative. */
    public Polynomial derivative() {
        if (degree() == 0) {
            return ZERO;
        }
        double[] slope = new double[coefficients.length - 1];
        for (int k = 0; k < slope.length; k++) {
            slope[k] = (k + 1) * coefficients[k + 1];
        }
        return new Polynomial(slope);
    }

    /** The antiderivative that is 0 at t = 0. */
    public Polynomial antiderivative() {
        double[] sum = new double[coefficients.length + 1];
        for (int k = 0; k < coefficients.length; k++) {
            sum[k + 1] = coefficients[k] / (k + 1);
        }
        return new Polynomial(sum);
    }

    /** The integral from one instant to another. */
    public double integral(double from, double to) {
        Polynomial sum = antiderivative();
        return sum.at(to) - sum.at(from);
    }

    /** The same curve seen from another origin: q(t) = p(t + origin). */
    public Polynomial shifted(double origin) {
        if (origin == 0 || degree() == 0) {
            return this;
        }
        return new Polynomial(shiftedCoefficients(origin));
    }

    /** Horner's scheme repeated: each pass leaves one more coefficient final. */
    private double[] shiftedCoefficients(double origin) {
        double[] shifted = coefficients.clone();
        for (int done = 0; done < shifted.length - 1; done++) {
            for (int k = shifted.length - 2; k >= done; k--) {
                shifted[k] += origin * shifted[k + 1];
            }
        }
        return shifted;
    }

    /** The same curve drawn over another span: q(t) = p(t / factor); factor not 0. */
    public Polynomial stretched(double factor) {
        double[] scaled = coefficients.clone();
        double power = 1;
        for (int k = 1; k < scaled.length; k++) {
            power *= factor;
            scaled[k] /= power;
        }
        return new Polynomial(scaled);
    }

    /**
     * The points of the open interval (from, to) where the sign changes, ascending. Between neighbouring extrema a
     * polynomial is monotone, so each crossing is bracketed by those of the derivative and found to the last bit; touching zero without crossing is not reported.
     */
    public double[] signChanges(double from, double to) {
        if (degree() == 0 || plainlyKeepsSign(from, to)) {
            return NONE;
        }
        double[] bounds = degree() == 1 ? new double[] {to} : derivative().signStretches(from, to);
        double[] crossings = new double[bounds.length];
        int count = 0;
        double left = from;
        for (double right : bounds) {
            double below = at(left);
            double above = at(right);
            if (below * above < 0) {
                crossings[count++] = root(left, right, below);
            } else if (above == 0 && right < to && below != 0 && at(Math.nextUp(right)) * below < 0) {
                crossings[count++] = right;
            }
            left = right;
        }
        return Arrays.copyOf(crossings, count);
    }

    /** The ends of the stretches of (from, to] over which the sign is the same, ascending; the last is the end itself. */
    public double[] signStretches(double from, double to) {
        double[] changes = signChanges(from, to);
        double[] ends = Arrays.copyOf(changes, changes.length + 1);
        ends[changes.length] = to;
        return ends;
    }

    /** The points where the value may be largest or smallest in [from, to]: both ends and every turning point inside. */
    public double[] extremalPoints(double from, double to) {
        if (degree() <= 1) {
            return new double[] {from, to};
        }
        double[] turns = derivative().signChanges(from, to);
        double[] points = new double[turns.length + 2];
        points[0] = from;
        System.arraycopy(turns, 0, points, 1, turns.length);
        points[turns.length + 1] = to;
        return points;
    }

    /** The largest magnitude of the value in [from, to]. */
    public double largestMagnitude(double from, double to) {
        double largest = Math.max(Math.abs(at(from)), Math.abs(at(to)));
        if (degree() > 1) {
            for (double turn : derivative().signChanges(from, to)) {
                largest = Math.max(largest, Math.abs(at(turn)));
            }
        }
        return largest;
    }

    /** Newton's steps while they stay in the bracket, halving it where they do not, down to the last bit. */
    private double root(double left, double right, double valueLeft) {
        double a = left;
        double b = right;
        double x = (a + b) / 2;
        for (int k = 0; k < MOST_STEPS; k++) {
            double value = 0;
            double slope = 0;
            for (int j = coefficients.length - 1; j >= 0; j--) {
                slope = slope * x + value;
                value = value * x + coefficients[j];
            }
            if (value == 0) {
                return x;
            }
            if (value > 0 == valueLeft > 0) {
                a = x;
            } else {
                b = x;
            }
            double next = x - value / slope;
            if (!(next > a && next < b)) {
                next = (a + b) / 2;
            }
            if (Math.abs(next - x) <= LAST_BIT * Math.abs(x)) {
                return next;
            }
            x = next;
        }
        return x;
    }

    /**
     * Whether the Bernstein coefficients over an interval are all of one sign, so that the polynomial keeps that sign there
     * (it lies in their convex hull); false proves nothing. Spares most searches for roots that are not there.
     */
    private boolean plainlyKeepsSign(double from, double to) {
        double[] bernstein = from == 0 ? coefficients.clone() : shiftedCoefficients(from);
        int degree = bernstein.length - 1;
        double scale = 1;
        for (int k = 0; k <= degree; k++) {
            bernstein[k] *= scale;
            scale *= (to - from) * (k + 1) / (degree - k);
        }
        for (int k = 1; k <= degree; k++) {
            for (int j = degree; j >= k; j--) {
                bernstein[j] += bernstein[j - 1];
            }
        }
        for (double value : bernstein) {
            if (value == 0 || value > 0 != bernstein[0] > 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Polynomial p && Arrays.equals(coefficients, p.coefficients);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(coefficients);
    }

    @Override
    public String toString() {
        return Arrays.toString(coefficients);
    }
}
