package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * What the cycle takes out of a ball bearing: the cubic mean of its load over all turns, P_m³ = (1/N)·integral of P³ dN, and
 * its life (C/P_m)³ million turns (ISO 281:2007, as Jindal, Machine Design, ch. 18 uses it). Swings of less than a ball's
 * pitch wear it in other ways.
 *
 * @param turns turns in a cycle
 * @param meanForce mean of the radial force over the turns, N
 */
record BearingLife(double turns, double meanForce) {

    /** Of the pieces of a cycle at the motor's shaft. */
    static BearingLife of(List<LoadPiece> pieces, RadialForce force) {
        double radians = 0;
        double wear = 0;
        for (LoadPiece piece : pieces) {
            double way = Math.signum(piece.speed().at(piece.duration() / 2));
            Polynomial speed = piece.speed().times(way);
            radians += speed.integral(0, piece.duration());
            double from = 0;
            for (double to : piece.pull().signStretches(0, piece.duration())) {
                double sign = Math.signum(piece.pull().at((from + to) / 2));
                Polynomial load = piece.pull().times(sign * force.perTorque()).plus(force.steady());
                wear += load.times(load).times(load).times(speed).integral(from, to);
                from = to;
            }
        }
        return radians == 0
                ? new BearingLife(0, 0)
                : new BearingLife(radians / (2 * Math.PI), Math.cbrt(Math.max(0, wear) / radians));
    }

    /** Turns that nine of ten bearings last under a load, both in N; without end if there is none. */
    static double lifeTurns(double rating, double load) {
        return Math.pow(rating / load, 3) * 1e6;
    }

    /** Load of the bearing at the shaft end for each unit of force outside it: R = F·(s + a)/s. */
    static double lever(double spacing, double overhang) {
        return (spacing + overhang) / spacing;
    }
}
