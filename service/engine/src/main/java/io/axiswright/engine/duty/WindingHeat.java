package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The highest temperature rise of a winding once the cycle has repeated for ever, heated by copper loss.
 *
 * @param rise the rise, K
 * @param instant when in the cycle, s
 */
record WindingHeat(double rise, double instant) {

    /** Between points where the loss turns, two bodies of unlike speed may crest more than once; each part is looked at. */
    private static final int PARTS = 8;

    /**
     * The exact periodic steady state. Over each piece the loss is a polynomial of time; one run through the cycle from 0
     * gives the start value of the state that repeats: y0 = y_end/(1 − e^(−period/tau)). Inside a piece the rise can peak
     * only where its growth passes from positive to negative.
     *
     * @param pieces the cycle at the bare motor shaft
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param risePerTorqueSquared steady rise per torque squared, K/(N·m)²
     * @param path the bodies it heats
     */
    static WindingHeat highest(List<LoadPiece> pieces, double inertia, double risePerTorqueSquared, HeatPath path) {
        List<Polynomial> torques = new ArrayList<>(pieces.size());
        List<Polynomial> drives = new ArrayList<>(pieces.size());
        double[] end = new double[path.bodies().size()];
        for (LoadPiece piece : pieces) {
            Polynomial torque = piece.torque(inertia);
            torques.add(torque);
            drives.add(torque.times(torque).times(risePerTorqueSquared));
            end = path.after(end, drives.getLast(), piece.duration());
        }
        double[] state = path.repeating(end, pieces.getLast().end());
        WindingHeat highest = new WindingHeat(sum(state), 0);
        for (int k = 0; k < pieces.size(); k++) {
            LoadPiece piece = pieces.get(k);
            double hardest = piece.torqueBound(inertia);
            double ceiling = risePerTorqueSquared * hardest * hardest;
            if (path.bound(state, ceiling, piece.duration()) > highest.rise) {
                highest = inside(highest, piece, torques.get(k), new Heating(path, state, drives.get(k)));
            }
            state = path.after(state, drives.get(k), piece.duration());
            if (sum(state) > highest.rise) {
                highest = new WindingHeat(sum(state), piece.end());
            }
        }
        return highest;
    }

    /** What heats within one piece. */
    private record Heating(HeatPath path, double[] start, Polynomial steady) {

        double rise(double t) {
            return sum(path.after(start, steady, t));
        }

        double growth(double t) {
            return path.growth(path.after(start, steady, t), steady.at(t));
        }

        /** Where growth passes from positive to negative, by bisection. */
        double crest(double left, double right) {
            double below = left;
            double above = right;
            while (true) {
                double middle = (below + above) / 2;
                if (middle <= below || middle >= above) {
                    return middle;
                }
                if (growth(middle) > 0) {
                    below = middle;
                } else {
                    above = middle;
                }
            }
        }
    }

    private static double sum(double[] state) {
        return DoubleStream.of(state).sum();
    }

    private static WindingHeat inside(WindingHeat sofar, LoadPiece piece, Polynomial torque, Heating heating) {
        WindingHeat highest = sofar;
        List<Double> points = points(piece, torque, heating.path.bodies().size());
        double left = points.getFirst();
        for (double right : points.subList(1, points.size())) {
            if (heating.growth(left) > 0 && heating.growth(right) < 0) {
                double at = heating.crest(left, right);
                double rise = heating.rise(at);
                if (rise > highest.rise) {
                    highest = new WindingHeat(rise, piece.start() + at);
                }
            }
            left = right;
        }
        return highest;
    }

    /** The ends of the piece, where its loss turns, and for more than one body points between. */
    private static List<Double> points(LoadPiece piece, Polynomial torque, int bodies) {
        List<Double> turns = DoubleStream.concat(
                        DoubleStream.of(torque.extremalPoints(0, piece.duration())),
                        DoubleStream.of(torque.signChanges(0, piece.duration())))
                .sorted()
                .boxed()
                .toList();
        if (bodies == 1) {
            return turns;
        }
        List<Double> points = new ArrayList<>();
        for (int k = 1; k < turns.size(); k++) {
            for (int part = 0; part < PARTS; part++) {
                points.add(turns.get(k - 1) + (turns.get(k) - turns.get(k - 1)) * part / PARTS);
            }
        }
        points.add(turns.getLast());
        return points;
    }
}
