package io.axiswright.engine.duty;

import static io.axiswright.engine.finding.Derivation.inputs;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.AngularAcceleration;
import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

/**
 * How a torque on a shaft came about at its instant: what the load asks for, and what it takes to accelerate what turns with the
 * shaft.
 *
 * @param subject what the derivations belong to
 * @param load the axis as that shaft feels it
 * @param inertia inertia of what turns with the shaft, kg·m²
 */
record ShaftBalance(String subject, AxisLoad load, double inertia) {

    static final String CLAUSE = "balance of torques at the shaft (Dubey, Fundamentals of Electrical Drives, ch. 2)";

    /** Of the pieces that meet at an instant of the cycle, s, the one with the most of something over its own time. */
    LoadPiece mostAt(double at, ToDoubleBiFunction<LoadPiece, Double> size) {
        LoadPiece largest = load.pieces().getFirst();
        double most = Double.NEGATIVE_INFINITY;
        for (LoadPiece piece : load.pieces()) {
            if (piece.start() <= at && at <= piece.end()) {
                double here = size.applyAsDouble(piece, at - piece.start());
                largest = here > most ? piece : largest;
                most = Math.max(most, here);
            }
        }
        return largest;
    }

    /** The piece with the greatest torque that the shaft has at an instant, s. */
    LoadPiece hardestAt(double at) {
        return mostAt(at, (one, time) -> Math.abs(one.torque(inertia).at(time)));
    }

    /** A torque of the cycle, at an instant of it, s. */
    Derivation torque(String symbol, double at, Torque result) {
        LoadPiece piece = hardestAt(at);
        double t = at - piece.start();
        return new Derivation(
                subject,
                symbol,
                symbol + " = |T_load + J·alpha|; J: all that turns with the shaft",
                inputs(
                        "t", new Time(at),
                        "T_load", new Torque(piece.torque().at(t)),
                        "J", new Inertia(inertia),
                        "alpha", new AngularAcceleration(piece.acceleration().at(t))),
                CLAUSE,
                result);
    }

    /** A torque of a controlled stop, so long after the stop begins, s. */
    Derivation stop(String symbol, HardestStop stop, double after, Torque result) {
        Course.Piece piece = hardestAt(stop.course().pieces(), after);
        double t = after - piece.start();
        double alpha = piece.speed().derivative().at(t);
        Polynomial first = stop.course().pieces().getFirst().speed();
        return new Derivation(
                subject,
                symbol,
                symbol + " = |T_load + J·alpha|; the stop that begins at t_0 of the cycle from a speed of w_0, after t",
                inputs(
                        "t_0", new Time(stop.instant()),
                        "w_0", new AngularSpeed(first.at(0)),
                        "t", new Time(after),
                        "T_load", new Torque(piece.torque().at(t) - inertia * alpha),
                        "J", new Inertia(inertia),
                        "alpha", new AngularAcceleration(alpha)),
                CLAUSE,
                result);
    }

    private static Course.Piece hardestAt(List<Course.Piece> pieces, double at) {
        Course.Piece hardest = pieces.getFirst();
        double most = -1;
        for (Course.Piece piece : pieces) {
            double size = Math.abs(piece.torque().at(at - piece.start()));
            if (piece.start() <= at && at <= piece.end() && size > most) {
                hardest = piece;
                most = size;
            }
        }
        return hardest;
    }
}
