package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * The highest temperature rise of a winding once the cycle has repeated for ever: one body, heated by copper loss.
 *
 * @param rise the rise, K
 * @param instant when in the cycle, s
 */
record WindingHeat(double rise, double instant) {

    /**
     * The exact periodic steady state. Over each piece the loss is a polynomial of time; one run through the cycle from 0
     * gives the start value of the state that repeats: y0 = y_end/(1 − e^(−period/tau)). Inside a piece the rise can peak
     * only while the loss falls, where it meets the rise the loss would hold for ever.
     *
     * @param pieces the cycle at the bare motor shaft
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param risePerTorqueSquared steady rise per torque squared, K/(N·m)²
     * @param tau thermal time constant of the winding, s
     */
    static WindingHeat highest(List<LoadPiece> pieces, double inertia, double risePerTorqueSquared, double tau) {
        List<Polynomial> torques = new ArrayList<>(pieces.size());
        List<Polynomial> drives = new ArrayList<>(pieces.size());
        double end = 0;
        for (LoadPiece piece : pieces) {
            Polynomial torque = piece.torque(inertia);
            torques.add(torque);
            drives.add(torque.times(torque).times(risePerTorqueSquared));
            end = Decay.after(end, drives.getLast(), piece.duration(), tau);
        }
        double state = end / -Math.expm1(-pieces.getLast().end() / tau);
        WindingHeat highest = new WindingHeat(state, 0);
        for (int k = 0; k < pieces.size(); k++) {
            LoadPiece piece = pieces.get(k);
            double bound = piece.torqueBound(inertia);
            double ceiling = risePerTorqueSquared * bound * bound;
            double gain = -Math.expm1(-piece.duration() / tau) * Math.max(0, ceiling - state);
            if (state + gain > highest.rise) {
                highest = inside(highest, piece, torques.get(k), drives.get(k), state, tau);
            }
            state = Decay.after(state, drives.get(k), piece.duration(), tau);
            if (state > highest.rise) {
                highest = new WindingHeat(state, piece.end());
            }
        }
        return highest;
    }

    /**
     * A bound without running through the cycle. The rise is the loss weighted by e^(−age/tau), and no weight is larger
     * than that of the newest loss: rise ≤ mean·X/(1 − e^(−X)), X = period/tau.
     */
    static double bound(double meanSteadyRise, double period, double tau) {
        double x = period / tau;
        return meanSteadyRise * x / -Math.expm1(-x);
    }

    private static WindingHeat inside(
            WindingHeat sofar, LoadPiece piece, Polynomial torque, Polynomial drive, double start, double tau) {
        WindingHeat highest = sofar;
        List<Double> points = new ArrayList<>(torque.extremalPoints(0, piece.duration()));
        points.addAll(torque.signChanges(0, piece.duration()));
        points.sort(null);
        double left = points.getFirst();
        for (double right : points.subList(1, points.size())) {
            boolean rising = Decay.after(start, drive, left, tau) < drive.at(left);
            boolean falling = Decay.after(start, drive, right, tau) > drive.at(right);
            if (rising && falling) {
                double at = meeting(start, drive, tau, left, right);
                double rise = Decay.after(start, drive, at, tau);
                if (rise > highest.rise) {
                    highest = new WindingHeat(rise, piece.start() + at);
                }
            }
            left = right;
        }
        return highest;
    }

    /** Where the rise meets the falling loss, by bisection. */
    private static double meeting(double start, Polynomial drive, double tau, double left, double right) {
        double below = left;
        double above = right;
        while (true) {
            double middle = (below + above) / 2;
            if (middle <= below || middle >= above) {
                return middle;
            }
            if (Decay.after(start, drive, middle, tau) < drive.at(middle)) {
                below = middle;
            } else {
                above = middle;
            }
        }
    }
}
