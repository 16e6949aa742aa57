package io.axiswright.engine.braking;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/** Walks through one axis's power, forwards only, repeating it if it is a cycle. */
final class CourseCursor {

    /** A cycle short of its end by less than this share is whole. */
    private static final double SAME = 1e-9;

    private final List<PowerCourse.Piece> pieces;
    private final double period;
    private final boolean repeat;
    private final double[] shifted;
    private int piece;
    private long turn;

    CourseCursor(PowerCourse course, boolean repeat) {
        this.pieces = course.pieces();
        this.period = course.duration();
        this.repeat = repeat;
        this.shifted = new double[course.coefficients()];
    }

    private int turns(double duration) {
        if (!repeat) {
            return 1;
        }
        return period > 0 ? (int) Math.ceil(duration / period * (1 - SAME)) : 0;
    }

    /** How many instants in [0, duration] a piece starts at or the course ends at. */
    int breakpoints(double duration) {
        return turns(duration) * (pieces.size() + 1);
    }

    /**
     * Writes down these instants, in s.
     *
     * @param from index of the first
     * @return index after the last
     */
    int breakpoints(double duration, double[] instants, int from) {
        int next = from;
        int turns = turns(duration);
        for (int k = 0; k < turns; k++) {
            for (PowerCourse.Piece one : pieces) {
                instants[next++] = k * period + one.start();
            }
            instants[next++] = (k + 1) * period;
        }
        return next;
    }

    /**
     * Adds this axis's power to a sum of powers.
     *
     * @param sum coefficients of the sum over the time since the origin
     * @param origin start of the stretch, s
     * @param middle an instant inside the stretch, not before that of the last call, s
     */
    void addTo(double[] sum, double origin, double middle) {
        if (!seek(middle)) {
            return;
        }
        PowerCourse.Piece here = pieces.get(piece);
        Polynomial power = here.power();
        int length = power.degree() + 1;
        for (int k = 0; k < length; k++) {
            shifted[k] = power.coefficient(k);
        }
        Horner.shift(shifted, length, origin - turn * period - here.start());
        for (int k = 0; k < length; k++) {
            sum[k] += shifted[k];
        }
    }

    private boolean seek(double instant) {
        if (pieces.isEmpty()) {
            return false;
        }
        while (instant >= turn * period + pieces.get(piece).end()) {
            if (piece + 1 < pieces.size()) {
                piece++;
            } else if (repeat) {
                piece = 0;
                turn++;
            } else {
                return false;
            }
        }
        return true;
    }
}
