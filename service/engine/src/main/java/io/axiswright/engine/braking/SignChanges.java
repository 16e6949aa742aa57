package io.axiswright.engine.braking;

import java.util.Arrays;

/**
 * Where a power or its slope changes sign. Between neighbouring turning points a polynomial is monotone, so each crossing is
 * bracketed by the roots of the derivative, found the same way, and Newton's steps take it from there.
 */
final class SignChanges {

    private static final double[] NONE = {};

    private SignChanges() {}

    /** The points strictly inside (0, end) at which the polynomial or its slope changes sign, ascending. */
    static double[] ofValueAndSlope(double[] coefficients, double end) {
        if (coefficients.length <= 2) {
            return of(coefficients, end);
        }
        double[] turns = of(Horner.derivative(coefficients), end);
        double[] zeros = between(turns, coefficients, end);
        double[] all = Arrays.copyOf(turns, turns.length + zeros.length);
        System.arraycopy(zeros, 0, all, turns.length, zeros.length);
        Arrays.sort(all);
        return all;
    }

    /** The points strictly inside (0, end) at which the polynomial changes sign, ascending. */
    static double[] of(double[] coefficients, double end) {
        return switch (coefficients.length) {
            case 1 -> NONE;
            case 2 -> ofLine(coefficients, end);
            default -> between(of(Horner.derivative(coefficients), end), coefficients, end);
        };
    }

    private static double[] ofLine(double[] line, double end) {
        double crossing = -line[0] / line[1];
        return crossing > 0 && crossing < end ? new double[] {crossing} : NONE;
    }

    /** A turning point that lies on zero is touched, not crossed, and is left out. */
    private static double[] between(double[] turns, double[] coefficients, double end) {
        var curve = new Horner.Graph(coefficients);
        double[] crossings = new double[turns.length + 1];
        int count = 0;
        double left = 0;
        double valueLeft = coefficients[0];
        for (int k = 0; k <= turns.length; k++) {
            double right = k < turns.length ? turns[k] : end;
            double valueRight = curve.value(right);
            if (valueLeft * valueRight < 0) {
                crossings[count++] = Curve.reach(curve, 0, left, right);
            }
            left = right;
            valueLeft = valueRight;
        }
        return Arrays.copyOf(crossings, count);
    }
}
