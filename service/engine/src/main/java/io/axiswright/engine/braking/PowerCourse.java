package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.DriveUnit;
import io.axiswright.engine.duty.Course;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * Power that one axis returns to its DC bus over time, in exact pieces; positive = returned.
 *
 * @param pieces the pieces, end to end, the first starting at 0 s
 * @param duration how long it lasts, s
 */
public record PowerCourse(List<Piece> pieces, double duration) {

    /** Power in W as a polynomial of the time in s since the piece's start. */
    public record Piece(double start, double end, Polynomial power) {}

    /** Keeps the pieces from being changed. */
    public PowerCourse {
        pieces = List.copyOf(pieces);
    }

    /** What an axis returns: p = −(T·w + (T/Km)² + standby loss); see the balance for one axis. */
    public static PowerCourse withLosses(Course course, DriveUnit unit) {
        double km = unit.motorConstant().si();
        double standby = unit.standbyLoss().si();
        return of(course, 1 / (km * km), standby);
    }

    /** What it would return were motor and drive free of loss: p = −T·w. */
    static PowerCourse withoutLosses(Course course) {
        return of(course, 0, 0);
    }

    private static PowerCourse of(Course course, double copper, double standby) {
        Piece[] pieces = new Piece[course.pieces().size()];
        for (int k = 0; k < pieces.length; k++) {
            Course.Piece piece = course.pieces().get(k);
            pieces[k] = new Piece(piece.start(), piece.end(), returned(piece, copper, standby));
        }
        return new PowerCourse(List.of(pieces), course.duration());
    }

    private static Polynomial returned(Course.Piece piece, double copper, double standby) {
        Polynomial torque = piece.torque();
        Polynomial taken = torque.times(piece.speed());
        if (copper > 0) {
            taken = taken.plus(torque.times(torque).times(copper)).plus(standby);
        }
        return taken.times(-1);
    }

    /** How many coefficients the longest of its polynomials has; at least 1. */
    int coefficients() {
        int most = 1;
        for (Piece piece : pieces) {
            most = Math.max(most, piece.power().degree() + 1);
        }
        return most;
    }

    /** Highest power at any instant, W; 0 if nothing is ever returned. */
    double peak() {
        double peak = 0;
        for (Piece piece : pieces) {
            double[] power = Horner.coefficients(piece.power());
            double length = piece.end() - piece.start();
            peak = Math.max(peak, Math.max(power[0], Horner.at(power, length)));
            for (double turn : SignChanges.of(Horner.derivative(power), length)) {
                peak = Math.max(peak, Horner.at(power, turn));
            }
        }
        return peak;
    }
}
