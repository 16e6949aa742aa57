package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * Where the magnitude of a polynomial is largest in an interval.
 *
 * @param at the point
 * @param value the value there, with its sign
 */
record Extreme(double at, double value) {

    /** The value of largest magnitude. */
    static Extreme ofMagnitude(Polynomial polynomial, double from, double to) {
        double best = Double.NEGATIVE_INFINITY;
        double at = from;
        for (double t : polynomial.extremalPoints(from, to)) {
            double size = Math.abs(polynomial.at(t));
            if (size > best) {
                best = size;
                at = t;
            }
        }
        return new Extreme(at, polynomial.at(at));
    }

    /** The torque of largest magnitude of a course. */
    static Extreme ofTorque(Course course) {
        Extreme largest = new Extreme(0, 0);
        for (Course.Piece piece : course.pieces()) {
            Extreme here = ofMagnitude(piece.torque(), 0, piece.duration());
            largest = here.size() > largest.size() ? new Extreme(piece.start() + here.at(), here.value()) : largest;
        }
        return largest;
    }

    double size() {
        return Math.abs(value);
    }
}
