package io.axiswright.engine.supply;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * What a load draws over its cycle, in exact pieces.
 *
 * @param pieces the pieces, end to end, the first starting at 0 s
 */
public record CurrentCourse(List<Piece> pieces) {

    /** Ends of pieces nearer to each other than this share of the period are one. */
    private static final double COINCIDENT = 1e-12;

    /**
     * A stretch of time over which the current is a polynomial.
     *
     * @param end when it ends, s
     * @param amperes the current in A over the time since its start
     */
    public record Piece(double end, Polynomial amperes) {}

    /** Keeps the pieces from being changed. */
    public CurrentCourse {
        pieces = List.copyOf(pieces);
    }

    /** How long it lasts, s. */
    double period() {
        return pieces.isEmpty() ? 0 : pieces.getLast().end();
    }

    /** The effective value, A. */
    public double rms() {
        double squares = 0;
        double start = 0;
        for (Piece piece : pieces) {
            squares += piece.amperes().times(piece.amperes()).integral(0, piece.end() - start);
            start = piece.end();
        }
        return start > 0 ? Math.sqrt(squares / start) : 0;
    }

    /** Times a factor. */
    public CurrentCourse times(double factor) {
        return new CurrentCourse(pieces.stream()
                .map(piece -> new Piece(piece.end(), piece.amperes().times(factor)))
                .toList());
    }

    /** What both draw together, the other lasting as long. */
    CurrentCourse plus(CurrentCourse other) {
        double same = COINCIDENT * period();
        var sum = new ArrayList<Piece>(pieces.size() + other.pieces.size());
        double time = 0;
        double ownStart = 0;
        double othersStart = 0;
        int own = 0;
        int others = 0;
        while (own < pieces.size() && others < other.pieces.size()) {
            Piece a = pieces.get(own);
            Piece b = other.pieces.get(others);
            double end = Math.min(a.end(), b.end());
            sum.add(new Piece(
                    end, a.amperes().shifted(time - ownStart).plus(b.amperes().shifted(time - othersStart))));
            if (a.end() <= end + same) {
                own++;
                ownStart = a.end();
            }
            if (b.end() <= end + same) {
                others++;
                othersStart = b.end();
            }
            time = end;
        }
        return new CurrentCourse(sum);
    }
}
