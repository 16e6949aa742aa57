package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * What the cycle takes out of a ball nut with play. The forces of the two directions roll on different flanks: each has its
 * cubic mean over all turns, F_m³ = (1/N)·integral of F³ dN, its life (C/F_m)³ million turns, and both together
 * L = (L1^(−10/9) + L2^(−10/9))^(−9/10) (ISO 3408-5:2006, 7.1.2, 7.2.1
 * and 7.2.3 by its table of contents; (C/F)³ confirmed by one open copy, the exponents of the common life from memory).
 *
 * @param turns turns of the screw in a cycle
 * @param forward mean force against the positive direction, N
 * @param backward mean force the other way, N
 */
record NutLife(double turns, double forward, double backward) {

    /** Of the pieces of a cycle; travel is the nut's way per radian of the screw, ratio the motor's turns per turn of it. */
    static NutLife of(List<LoadPiece> pieces, double travel, double ratio) {
        double radians = 0;
        double forward = 0;
        double backward = 0;
        for (LoadPiece piece : pieces) {
            Polynomial speed = piece.speed().times(1 / ratio);
            Polynomial force = piece.pull().times(1 / travel);
            Polynomial wear = force.times(force).times(force).times(speed);
            double sign = Math.signum(speed.at(piece.duration() / 2));
            radians += sign * speed.integral(0, piece.duration());
            double from = 0;
            for (double to : force.signStretches(0, piece.duration())) {
                double part = sign * wear.integral(from, to);
                forward += Math.max(0, part);
                backward += Math.max(0, -part);
                from = to;
            }
        }
        return radians == 0
                ? new NutLife(0, 0, 0)
                : new NutLife(radians / (2 * Math.PI), Math.cbrt(forward / radians), Math.cbrt(backward / radians));
    }

    /** One force that would wear both flanks' nut as much: what C/F of the common life means. */
    double equivalentForce() {
        return Math.pow(Math.pow(forward, 10 / 3.0) + Math.pow(backward, 10 / 3.0), 3 / 10.0);
    }

    /** Turns that nine of ten nuts last; without end if nothing loads them. */
    double lifeTurns(double rating) {
        return Math.pow(rating / equivalentForce(), 3) * 1e6;
    }
}
