package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * A standstill in which the motor holds torque. While a motor turns its phases share the heat; at standstill, at the worst angle, one
 * carries the peak of the current, √2 times its rms value, and has up to twice the mean heat. It is taken to start as warm as the others,
 * for they even out while the motor turns.
 *
 * @param torqueSquared mean of the torque squared, (N·m)²
 * @param duration how long it lasts, s; infinite if the axis never moves
 * @param end when it ends, s
 */
record Hold(double torqueSquared, double duration, double end) {

    /** The current of the worst phase over the rms current, squared. */
    static final double WORST_PHASE = 2;

    /** Those of a cycle that repeats; what follows each other is one, also across its end. */
    static List<Hold> of(List<LoadPiece> pieces) {
        List<Hold> holds = new ArrayList<>();
        boolean goesOn = false;
        for (LoadPiece piece : pieces) {
            boolean held =
                    piece.speed().equals(Polynomial.ZERO) && !piece.torque().equals(Polynomial.ZERO);
            if (held && piece.duration() > 0) {
                double squared = piece.torque().times(piece.torque()).integral(0, piece.duration()) / piece.duration();
                Hold hold = new Hold(squared, piece.duration(), piece.end());
                holds.add(goesOn ? holds.removeLast().followedBy(hold) : hold);
            }
            goesOn = held;
        }
        return List.copyOf(goesOn ? wrapped(holds, pieces) : holds);
    }

    private static List<Hold> wrapped(List<Hold> holds, List<LoadPiece> pieces) {
        Hold first = holds.getFirst();
        Hold last = holds.getLast();
        if (first.duration == pieces.getLast().end()) {
            return List.of(new Hold(first.torqueSquared, Double.POSITIVE_INFINITY, first.end));
        }
        if (holds.size() > 1 && first.end - first.duration <= 0) {
            holds.set(0, last.followedBy(first));
            holds.removeLast();
        }
        return holds;
    }

    private Hold followedBy(Hold next) {
        double whole = duration + next.duration;
        return new Hold((torqueSquared * duration + next.torqueSquared * next.duration) / whole, whole, next.end);
    }

    /**
     * How much hotter the worst phase gets by its end than all do on the average, K.
     *
     * @param perTorqueSquared steady rise of a phase at standstill above that while turning, per torque squared, K/(N·m)²
     * @param winding the body that the phases are parts of
     */
    double extraRise(double perTorqueSquared, HeatPath.Body winding) {
        return winding.share() * perTorqueSquared * torqueSquared * -Math.expm1(-duration / winding.tau());
    }
}
