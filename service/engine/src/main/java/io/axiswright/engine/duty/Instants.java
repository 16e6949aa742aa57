package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.numeric.PolynomialPieces;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/** Turns what depends on position, speed and acceleration instant by instant into polynomial pieces. */
final class Instants {

    /** How well the pieces meet the course, as a share of its largest value. */
    private static final double TOLERANCE = 1e-11;

    /** Where the largest value is looked for, to know what the share is of. */
    private static final int SAMPLES = 64;

    private Instants() {}

    /** What holds at one instant. */
    @FunctionalInterface
    interface Value {

        /** The value at a position with a speed and an acceleration. */
        double at(double position, double speed, double acceleration);
    }

    /** What holds on a stretch without breaks. */
    @FunctionalInterface
    interface Values {

        /** The values on the stretch around a position. */
        Value around(double middle);
    }

    /** The pieces of a motion stated as that of the shaft itself, whose torque is smooth throughout. */
    static List<ShaftPiece> ofShaft(LoadMotion motion, Value torque) {
        return ofShaft(motion, List.of(), _ -> torque);
    }

    /**
     * The pieces of a motion stated as that of the shaft itself.
     *
     * @param breaks positions at which the torque is not smooth
     */
    static List<ShaftPiece> ofShaft(LoadMotion motion, Collection<Double> breaks, Values torque) {
        Polynomial speed = motion.position().derivative();
        List<ShaftPiece> result = new ArrayList<>();
        for (PolynomialPieces.Piece piece : pieces(motion, breaks, torque)) {
            Polynomial here = speed.shifted(piece.start());
            result.add(new ShaftPiece(
                    piece.start(),
                    piece.length(),
                    motion.position().shifted(piece.start()),
                    here,
                    here.derivative(),
                    piece.polynomial()));
        }
        return result;
    }

    /** The pieces of a motion that the shaft follows in its own way; the speed of each is the sum of its acceleration. */
    static List<ShaftPiece> ofLoad(LoadMotion motion, Value shaftSpeed, Value shaftAcceleration, Value torque) {
        List<ShaftPiece> result = new ArrayList<>();
        List<PolynomialPieces.Piece> accelerations = pieces(motion, List.of(), _ -> shaftAcceleration);
        for (PolynomialPieces.Piece outer : pieces(motion, List.of(), _ -> torque)) {
            double end = outer.start() + outer.length();
            for (PolynomialPieces.Piece inner : accelerations) {
                double from = Math.max(outer.start(), inner.start());
                double to = Math.min(end, inner.start() + inner.length());
                if (from < to) {
                    Polynomial acceleration = inner.polynomial().shifted(from - inner.start());
                    double speed = over(motion, shaftSpeed).applyAsDouble(from);
                    result.add(new ShaftPiece(
                            from,
                            to - from,
                            motion.position().shifted(from),
                            acceleration.antiderivative().plus(speed),
                            acceleration,
                            outer.polynomial().shifted(from - outer.start())));
                }
            }
        }
        return result;
    }

    /** The largest magnitude of a smooth function between two points. */
    static double largest(DoubleUnaryOperator function, double from, double to) {
        double start = Math.min(from, to);
        double end = Math.max(from, to);
        double largest = Math.abs(function.applyAsDouble(start));
        if (end > start) {
            double tolerance = TOLERANCE * sampled(function, start, end);
            for (PolynomialPieces.Piece piece : PolynomialPieces.of(function, start, end, tolerance)) {
                largest = Math.max(largest, piece.polynomial().largestMagnitude(0, piece.length()));
            }
        }
        return largest;
    }

    private static List<PolynomialPieces.Piece> pieces(LoadMotion motion, Collection<Double> breaks, Values values) {
        double[] ends = DoubleStream.concat(
                        DoubleStream.of(0, motion.duration()),
                        breaks.stream().flatMapToDouble(place -> DoubleStream.of(motion.instantsAt(place))))
                .sorted()
                .distinct()
                .toArray();
        Value[] stretches = new Value[ends.length - 1];
        double scale = 0;
        for (int k = 0; k < stretches.length; k++) {
            stretches[k] = values.around(motion.position().at((ends[k] + ends[k + 1]) / 2));
            scale = Math.max(scale, scale(motion, stretches[k], ends[k], ends[k + 1]));
        }
        List<PolynomialPieces.Piece> pieces = new ArrayList<>();
        for (int k = 0; k < stretches.length; k++) {
            pieces.addAll(PolynomialPieces.of(over(motion, stretches[k]), ends[k], ends[k + 1], TOLERANCE * scale));
        }
        return pieces;
    }

    private static DoubleUnaryOperator over(LoadMotion motion, Value value) {
        Polynomial speed = motion.position().derivative();
        Polynomial acceleration = speed.derivative();
        return t -> value.at(motion.position().at(t), speed.at(t), acceleration.at(t));
    }

    /** The largest value, and the largest part of it: parts that cancel leave their rounding behind. */
    private static double scale(LoadMotion motion, Value value, double from, double to) {
        return sampled(over(motion, value), from, to)
                + sampled(over(motion, (q, v, a) -> value.at(q, v, 0)), from, to)
                + sampled(over(motion, (q, v, a) -> value.at(q, 0, a)), from, to)
                + sampled(over(motion, (q, v, a) -> value.at(q, 0, 0)), from, to);
    }

    private static double sampled(DoubleUnaryOperator function, double from, double to) {
        double largest = 0;
        for (int k = 0; k <= SAMPLES; k++) {
            largest = Math.max(largest, Math.abs(function.applyAsDouble(from + (to - from) * k / SAMPLES)));
        }
        return largest;
    }
}
