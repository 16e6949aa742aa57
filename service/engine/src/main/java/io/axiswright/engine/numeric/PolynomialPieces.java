package io.axiswright.engine.numeric;

import io.axiswright.engine.quantity.NotFinite;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Smooth functions as polynomials, piece by piece, so that whatever is exact for polynomials serves for every smooth course.
 * Each piece interpolates at Chebyshev points; a piece that misses the function by more than the tolerance is halved, as long
 * as that does not make too many of them: a tolerance below the rounding of the function would have all halved for ever.
 */
public final class PolynomialPieces {

    /** Degree of every piece: high enough for few pieces, low enough for sound sums of powers. */
    private static final int DEGREE = 8;

    /** Halvings before a piece is taken as it is: the function is not smooth there, and the pieces are far below any time of interest. */
    private static final int MOST_HALVINGS = 24;

    /** Pieces of one function, for the same reason: twice what a sine needs over 200 turns, at 40 a turn. */
    static final int MOST_PIECES = 16_384;

    /** Points between the interpolation points at which the error is judged. */
    private static final int PROBES = 2 * DEGREE + 3;

    /** The Chebyshev points of a piece as shares of its length. */
    private static final double[] PLACES = IntStream.rangeClosed(0, DEGREE)
            .mapToDouble(k -> (1 - Math.cos(Math.PI * k / DEGREE)) / 2)
            .toArray();

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
     * @param tolerance largest error allowed, in the function's own unit; above 0. Where too many pieces would be needed for
     *     it, all of the round of halving that would have made them are taken as they are
     * @throws NotFinite if the function is not
     */
    public static List<Piece> of(DoubleUnaryOperator function, double from, double to, double tolerance) {
        List<Fit> fits = List.of(Fit.of(function, from, to));
        for (int k = 0; k < MOST_HALVINGS; k++) {
            long missing = fits.stream().filter(fit -> fit.error > tolerance).count();
            if (missing == 0 || fits.size() + missing > MOST_PIECES) {
                break;
            }
            fits = halved(fits, function, tolerance);
        }
        return fits.stream()
                .map(fit -> new Piece(fit.from, fit.to - fit.from, fit.polynomial))
                .toList();
    }

    private static List<Fit> halved(List<Fit> fits, DoubleUnaryOperator function, double tolerance) {
        List<Fit> finer = new ArrayList<>();
        for (Fit fit : fits) {
            if (fit.error > tolerance) {
                double middle = (fit.from + fit.to) / 2;
                finer.add(Fit.of(function, fit.from, middle));
                finer.add(Fit.of(function, middle, fit.to));
            } else {
                finer.add(fit);
            }
        }
        return finer;
    }

    /** A piece with the largest error seen. */
    private record Fit(double from, double to, Polynomial polynomial, double error) {

        static Fit of(DoubleUnaryOperator function, double from, double to) {
            Polynomial polynomial = interpolated(function, from, to - from);
            double error = PolynomialPieces.error(function, polynomial, from, to - from);
            if (!Double.isFinite(error)) {
                throw new NotFinite(from, to);
            }
            return new Fit(from, to, polynomial, error);
        }
    }

    /** Newton's divided differences at the Chebyshev points of the piece, both ends among them, so that pieces meet. */
    private static Polynomial interpolated(DoubleUnaryOperator function, double from, double length) {
        double[] difference = new double[DEGREE + 1];
        for (int k = 0; k <= DEGREE; k++) {
            difference[k] = function.applyAsDouble(from + PLACES[k] * length);
        }
        for (int order = 1; order <= DEGREE; order++) {
            for (int k = DEGREE; k >= order; k--) {
                difference[k] = (difference[k] - difference[k - 1]) / (PLACES[k] - PLACES[k - order]);
            }
        }
        double[] sum = new double[DEGREE + 1];
        sum[0] = difference[DEGREE];
        for (int k = DEGREE - 1; k >= 0; k--) {
            for (int power = DEGREE - k; power > 0; power--) {
                sum[power] = sum[power - 1] - PLACES[k] * sum[power];
            }
            sum[0] = difference[k] - PLACES[k] * sum[0];
        }
        return Polynomial.of(sum).stretched(length);
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
