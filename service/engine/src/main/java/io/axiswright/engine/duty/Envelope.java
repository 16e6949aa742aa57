package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The instant of a cycle that uses most of a torque–speed curve.
 *
 * @param use which share of the torque available is used then
 * @param instant when, s
 * @param torque magnitude of the torque then, N·m
 * @param available torque available then, N·m
 */
record Envelope(double use, double instant, double torque, double available) {

    /**
     * Compares the whole course with the curve. Between the corners of the curve the torque available is a straight line
     * over speed and so a polynomial of time; the share |T|/A is largest where T'·A = T·A'. Pieces that cannot beat the
     * worst instant so far are passed over.
     *
     * @param pieces the cycle at the bare motor shaft
     * @param inertia inertia of the motor and what turns with it, kg·m²
     * @param curve the torque available
     */
    static Envelope worst(List<LoadPiece> pieces, double inertia, TorqueCurve curve) {
        Envelope worst = new Envelope(0, 0, 0, curve.at(0));
        for (LoadPiece piece : pieces) {
            double least = curve.lowest(piece.slowest(), piece.fastest());
            if (DutyLimit.use(piece.torqueBound(inertia), least) > worst.use) {
                Polynomial torque = piece.torque(inertia);
                Course.Piece course = new Course.Piece(piece.start(), piece.duration(), piece.speed(), torque);
                worst = refine(worst, course, curve);
            }
        }
        return worst;
    }

    /** No course of these pieces uses more of the curve than this. */
    static double bound(List<LoadPiece> pieces, double inertia, TorqueCurve curve) {
        double bound = 0;
        for (LoadPiece piece : pieces) {
            double least = curve.lowest(piece.slowest(), piece.fastest());
            bound = Math.max(bound, DutyLimit.use(piece.torqueBound(inertia), least));
        }
        return bound;
    }

    /** The same for a course with the motor's inertia in its torque. */
    static Envelope worst(Course course, TorqueCurve curve) {
        Envelope worst = new Envelope(0, 0, 0, curve.at(0));
        for (Course.Piece piece : course.pieces()) {
            worst = refine(worst, piece, curve);
        }
        return worst;
    }

    private static Envelope refine(Envelope sofar, Course.Piece piece, TorqueCurve curve) {
        Envelope worst = sofar;
        Polynomial torque = piece.torque();
        double middle = piece.speed().at(piece.duration() / 2);
        Polynomial speed = middle < 0 ? piece.speed().times(-1) : piece.speed();
        double[] cuts = cuts(piece, speed, curve);
        for (int k = 1; k < cuts.length; k++) {
            double from = cuts[k - 1];
            double to = cuts[k];
            Polynomial available = curve.along(speed, speed.at((from + to) / 2));
            Polynomial turning = torque.derivative().times(available).minus(torque.times(available.derivative()));
            worst = worse(worst, piece, from, available);
            for (double t : turning.signStretches(from, to)) {
                worst = worse(worst, piece, t, available);
            }
        }
        return worst;
    }

    private static Envelope worse(Envelope sofar, Course.Piece piece, double t, Polynomial available) {
        double size = Math.abs(piece.torque().at(t));
        double there = Math.max(0, available.at(t));
        double use = DutyLimit.use(size, there);
        return use > sofar.use ? new Envelope(use, piece.start() + t, size, there) : sofar;
    }

    /** The ends of the piece and the instants at which its speed passes a corner of the curve, ascending. */
    private static double[] cuts(Course.Piece piece, Polynomial speed, TorqueCurve curve) {
        double slowest = Double.POSITIVE_INFINITY;
        double fastest = 0;
        for (double t : speed.extremalPoints(0, piece.duration())) {
            slowest = Math.min(slowest, Math.abs(speed.at(t)));
            fastest = Math.max(fastest, Math.abs(speed.at(t)));
        }
        DoubleStream passings = DoubleStream.of(curve.corners(slowest, fastest))
                .flatMap(corner -> DoubleStream.of(speed.plus(-corner).signChanges(0, piece.duration())));
        return DoubleStream.concat(DoubleStream.of(0, piece.duration()), passings)
                .sorted()
                .toArray();
    }
}
