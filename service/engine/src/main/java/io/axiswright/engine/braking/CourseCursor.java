package io.axiswright.engine.braking;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/** Walks through one axis's power, forwards only, repeating it if it is a cycle. */
final class CourseCursor {

    /** A cycle short of its end by less than this share is whole. */
    private static final double SAME = 1e-9;

    private final PowerCourse course;
    private final boolean repeat;
    private int piece;
    private long turn;

    CourseCursor(PowerCourse course, boolean repeat) {
        this.course = course;
        this.repeat = repeat;
    }

    /** Every instant in [0, duration] at which a piece starts or the course ends, in s. */
    static DoubleStream breakpoints(PowerCourse course, double duration) {
        long turns = course.duration() > 0 ? (long) Math.ceil(duration / course.duration() * (1 - SAME)) : 0;
        return DoubleStream.iterate(0, turn -> turn < turns, turn -> turn + 1)
                .flatMap(turn -> DoubleStream.concat(
                        course.pieces().stream().mapToDouble(p -> turn * course.duration() + p.start()),
                        DoubleStream.of((turn + 1) * course.duration())));
    }

    /**
     * Adds this axis's power to a sum of powers.
     *
     * @param sum coefficients of the sum over the time since the origin; may be changed
     * @param origin start of the stretch, s
     * @param middle an instant inside the stretch, not before that of the last call, s
     * @return the coefficients of the new sum
     */
    double[] addTo(double[] sum, double origin, double middle) {
        if (!seek(middle)) {
            return sum;
        }
        PowerCourse.Piece here = course.pieces().get(piece);
        double[] shifted = Horner.coefficients(here.power());
        Horner.shift(shifted, origin - turn * course.duration() - here.start());
        double[] longer = sum.length >= shifted.length ? sum : Arrays.copyOf(sum, shifted.length);
        for (int k = 0; k < shifted.length; k++) {
            longer[k] += shifted[k];
        }
        return longer;
    }

    private boolean seek(double instant) {
        if (course.pieces().isEmpty()) {
            return false;
        }
        while (instant >= turn * course.duration() + course.pieces().get(piece).end()) {
            if (piece + 1 < course.pieces().size()) {
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
