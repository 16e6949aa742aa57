package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How many times larger, in torque and in speed alike, a torque–speed curve would have to be to hold a course. That measures a
 * speed one percent beyond the curve as one percent, and a torque a hundred times too high as a hundred, on one scale; torque
 * over torque available, by which limits are judged, grows beyond all bounds where a curve ends.
 *
 * <p>A point of speed w and torque T lies on the s-fold curve where the ray through it meets the curve. On a line
 * T = a + b·w that is s = (|T| − b·|w|)/a, and beyond the last point s = |w|/w_top. A curve that rises is taken as level up to
 * where it is highest, so that there is one such s.
 */
final class Enlargement {

    /** Gains below this share are rounding. */
    private static final double ROUNDING = 1e-9;

    private final double[] speeds;
    private final double[] torques;

    /** Of a curve with points at such speeds, rising, and with such torques. */
    Enlargement(double[] speeds, double[] torques) {
        this.speeds = speeds;
        this.torques = torques.clone();
        for (int k = torques.length - 2; k >= 0; k--) {
            this.torques[k] = Math.max(this.torques[k], this.torques[k + 1]);
        }
    }

    /** For one state, neither speed nor torque negative; at most {@link DutyLimit#HIGHEST_USE}. */
    double at(double speed, double torque) {
        int line = lineThrough(speed, torque);
        return held(line == speeds.length ? speed / speeds[line - 1] : (torque - slope(line) * speed) / level(line));
    }

    /**
     * For a whole course.
     *
     * @param pieces the cycle at the bare motor shaft
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param least what is asked at least, from elsewhere; pieces that cannot ask for more are passed over
     */
    double over(List<LoadPiece> pieces, double inertia, double least) {
        double most = least;
        for (LoadPiece piece : pieces) {
            if (at(piece.fastest(), piece.torqueBound(inertia)) > most * (1 + ROUNDING)) {
                most = Math.max(most, over(piece, piece.torque(inertia)));
            }
        }
        return held(most);
    }

    private double over(LoadPiece piece, Polynomial torque) {
        double end = piece.duration();
        Polynomial speed = piece.speed().at(end / 2) < 0 ? piece.speed().times(-1) : piece.speed();
        double[] signs = torque.signStretches(0, end);
        double most = 0;
        double from = 0;
        for (double to : signs) {
            Polynomial size = torque.at((from + to) / 2) < 0 ? torque.times(-1) : torque;
            most = Math.max(most, over(size, speed, from, to));
            from = to;
        }
        return most;
    }

    /** Neither torque nor speed changes its sign between the two times. */
    private double over(Polynomial torque, Polynomial speed, double from, double to) {
        double[] cuts = DoubleStream.concat(DoubleStream.of(from, to), rayCrossings(torque, speed, from, to))
                .sorted()
                .toArray();
        double most = 0;
        for (int k = 1; k < cuts.length; k++) {
            double middle = (cuts[k - 1] + cuts[k]) / 2;
            int line = lineThrough(speed.at(middle), torque.at(middle));
            Polynomial along = line == speeds.length ? speed : torque.minus(speed.times(slope(line)));
            for (double t : along.extremalPoints(cuts[k - 1], cuts[k])) {
                most = Math.max(most, at(Math.max(0, speed.at(t)), Math.max(0, torque.at(t))));
            }
        }
        return most;
    }

    /** When the course passes from one line to another as seen from the origin. */
    private DoubleStream rayCrossings(Polynomial torque, Polynomial speed, double from, double to) {
        DoubleStream crossings = DoubleStream.empty();
        for (int k = 0; k < speeds.length; k++) {
            Polynomial side = torque.times(speeds[k]).minus(speed.times(torques[k]));
            crossings = DoubleStream.concat(crossings, DoubleStream.of(side.signChanges(from, to)));
        }
        return crossings;
    }

    /** The line that the ray through a state meets, by the point at which it ends; as many as there are points beyond the last. */
    private int lineThrough(double speed, double torque) {
        int line = 0;
        while (line < speeds.length && torque * speeds[line] < torques[line] * speed) {
            line++;
        }
        return line;
    }

    private double slope(int line) {
        return line == 0 ? 0 : (torques[line] - torques[line - 1]) / (speeds[line] - speeds[line - 1]);
    }

    /** The torque of a line at standstill, N·m. */
    private double level(int line) {
        return torques[line] - slope(line) * speeds[line];
    }

    /** Nothing over nothing asks for nothing. */
    private static double held(double enlargement) {
        return Double.isNaN(enlargement) ? 0 : Math.min(enlargement, DutyLimit.HIGHEST_USE);
    }
}
