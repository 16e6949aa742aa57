package io.axiswright.engine.duty;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * A few instants of a cycle at the bare motor shaft: where torque, speed or acceleration of a piece is at an extreme. No motor
 * uses less of its curve over the whole cycle than at one of them.
 *
 * @param speed magnitudes of speed, rad/s
 * @param torque torques, N·m
 * @param acceleration accelerations, rad/s²
 */
@SuppressWarnings("ArrayRecordComponent") // read only here, never compared
record Samples(double[] speed, double[] torque, double[] acceleration) {

    static Samples of(List<LoadPiece> pieces) {
        double[][] rows = pieces.stream()
                .flatMap(piece -> List.of(piece.torque(), piece.speed(), piece.acceleration()).stream()
                        .flatMapToDouble(course -> DoubleStream.of(course.extremalPoints(0, piece.duration())))
                        .distinct()
                        .mapToObj(t -> new double[] {
                            Math.abs(piece.speed().at(t)),
                            piece.torque().at(t),
                            piece.acceleration().at(t)
                        }))
                .toArray(double[][]::new);
        double[][] columns = new double[3][rows.length];
        for (int k = 0; k < rows.length; k++) {
            for (int column = 0; column < columns.length; column++) {
                columns[column][k] = rows[k][column];
            }
        }
        return new Samples(columns[0], columns[1], columns[2]);
    }

    /** The largest share of a torque–speed curve that a motor with that inertia on its shaft uses at these instants. */
    double use(double inertia, TorqueCurve curve) {
        double use = 0;
        for (int k = 0; k < speed.length; k++) {
            double size = Math.abs(torque[k] + inertia * acceleration[k]);
            use = Math.max(use, DutyLimit.use(size, Math.max(0, curve.at(speed[k]))));
        }
        return use;
    }

    /** How many times larger a curve would have to be for such a motor at these instants. */
    double enlargement(double inertia, Enlargement curve) {
        double most = 0;
        for (int k = 0; k < speed.length; k++) {
            most = Math.max(most, curve.at(speed[k], Math.abs(torque[k] + inertia * acceleration[k])));
        }
        return most;
    }
}
