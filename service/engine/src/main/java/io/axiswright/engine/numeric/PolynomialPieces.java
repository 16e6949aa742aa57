package io.axiswright.engine.numeric;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Smooth functions as polynomials, piece by piece, so that whatever is exact for polynomials serves for every smooth course.
 * Each piece interpolates at Chebyshev points; a piece that misses the function by more than the tolerance is halved.
 */
public final class PolynomialPieces {

    /** Degree of every piece: high enough for few pieces, low enough for sound sums of powers. */
    private static final int DEGREE = 8;

    /** Halvings before a piece is taken as it is: the function is not smooth there, and the pieces are far below any time of interest. */
    private static final int MOST_HALVINGS = 24;

    /** Points between the interpolation points at which the error is judged. */
    private static final int PROBES = 2 * DEGREE + 3;

    private PolynomialPieces() {}

    /**
     * One piece.
     *
     * @param start where it starts
     * @param length how long it is
     * @param polynomial the function over the distance from the start
     */
    public record Piece(double start, double length, Polynomial polynomial) {}

    /**
     * The function between two points, in pieces end to end.
     *
     * @param function smooth but for finitely many points; finite throughout
     * @param tolerance largest error allowed, in the function's own unit; above 0
     */
    public static List<Piece> of(DoubleUnaryOperator function, double from, double to, double tolerance) {
        List<Piece> pieces = new ArrayList<>();
        add(pieces, function, from, to, tolerance, 0);
        return List.copyOf(pieces);
    }

    private static void add(
            List<Piece> pieces, DoubleUnaryOperator function, double from, double to, double tolerance, int halvings) {
        Polynomial fit = interpolated(function, from, to - from);
        if (halvings == MOST_HALVINGS || error(function, fit, from, to - from) <= tolerance) {
            pieces.add(new Piece(from, to - from, fit));
            return;
        }
        double middle = (from + to) / 2;
        add(pieces, function, from, middle, tolerance, halvings + 1);
        add(pieces, function, middle, to, tolerance, halvings + 1);
    }

    /** Newton's divided differences at the Chebyshev points of the piece, both ends among them, so that pieces meet. */
    private static Polynomial interpolated(DoubleUnaryOperator function, double from, double length) {
        double[] x = new double[DEGREE + 1];
        double[] difference = new double[DEGREE + 1];
        for (int k = 0; k <= DEGREE; k++) {
            x[k] = (1 - Math.cos(Math.PI * k / DEGREE)) / 2;
            difference[k] = function.applyAsDouble(from + x[k] * length);
        }
        for (int order = 1; order <= DEGREE; order++) {
            for (int k = DEGREE; k >= order; k--) {
                difference[k] = (difference[k] - difference[k - 1]) / (x[k] - x[k - order]);
            }
        }
        Polynomial sum = Polynomial.of(difference[DEGREE]);
        for (int k = DEGREE - 1; k >= 0; k--) {
            sum = sum.times(Polynomial.of(-x[k], 1)).plus(difference[k]);
        }
        return sum.stretched(length);
    }

    private static double error(DoubleUnaryOperator function, Polynomial fit, double from, double length) {
        double error = 0;
        for (int k = 1; k < PROBES; k++) {
            double at = length * k / PROBES;
            error = Math.max(error, Math.abs(function.applyAsDouble(from + at) - fit.at(at)));
        }
        return error;
    }
}
