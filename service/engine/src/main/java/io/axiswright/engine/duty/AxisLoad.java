package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Move;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.numeric.Polynomial;
import io.axiswright.engine.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an axis asks of any motor over its cycle; worked out once, whatever the number of drive units to choose among.
 *
 * @param drivetrain the way from the load to the motor shaft
 * @param pieces the cycle at the bare motor shaft, end to end
 * @param period how long the cycle lasts, s
 * @param netTravel how far the load is from its start when the cycle ends, m or rad
 * @param travelled the sum of all distances, m or rad
 * @param holdingTorque largest torque a brake on the motor shaft may have to hold, N·m
 * @param reflectedInertia largest inertia of load, mechanism and gear at the motor shaft, kg·m²
 * @param gravity whether gravity drives it
 */
record AxisLoad(
        Drivetrain drivetrain,
        List<LoadPiece> pieces,
        double period,
        double netTravel,
        double travelled,
        double holdingTorque,
        double reflectedInertia,
        boolean gravity) {

    static AxisLoad of(Axis axis) {
        Drivetrain drivetrain = Drivetrain.of(axis);
        List<LoadPiece> pieces = new ArrayList<>();
        double start = 0;
        double position = drivetrain.mechanics().start();
        double travelled = 0;
        double holding = 0;
        double inertia = 0;
        boolean gravity = false;
        for (Segment segment : axis.cycle().segments()) {
            LoadEffort effort = effort(drivetrain.mechanics(), segment);
            double duration = segment.duration().si();
            double from = position;
            switch (segment) {
                case Move move -> {
                    pieces.addAll(move(drivetrain, effort, move, start, position));
                    position += move.distance().si();
                    travelled += Math.abs(move.distance().si());
                }
                case Dwell dwell -> {
                    boolean held = dwell.brakeHolds() && axis.drive().holdingBrake();
                    pieces.add(drivetrain.resting(effort, start, duration, position, held));
                }
            }
            start += duration;
            holding = Math.max(holding, effort.largestHolding(from, position));
            inertia = Math.max(inertia, effort.largestInertia(from, position));
            gravity |= effort.falls();
        }
        return new AxisLoad(
                drivetrain,
                List.copyOf(pieces),
                start,
                position - drivetrain.mechanics().start(),
                travelled,
                drivetrain.holdingTorque(holding),
                drivetrain.reflectedInertia(inertia),
                gravity);
    }

    /** The largest torque the load asks for at the mechanism's shaft, moving or held, before any loss, N·m. */
    double hardestPull() {
        double hardest = 0;
        for (LoadPiece piece : pieces) {
            hardest = Math.max(
                    hardest,
                    Extreme.ofMagnitude(piece.pull(), 0, piece.duration()).size());
        }
        return hardest;
    }

    /** What turns with the motor besides rotor and brake, kg·m². */
    double addedInertia() {
        return drivetrain.gearInertia() + drivetrain.couplingInertia();
    }

    /** The course of a motor with the given inertia on its shaft. */
    Course course(double inertia) {
        return course(pieces, inertia);
    }

    /** Pieces as a course. */
    static Course course(List<LoadPiece> pieces, double inertia) {
        List<Course.Piece> result = new ArrayList<>(pieces.size());
        for (LoadPiece piece : pieces) {
            result.add(new Course.Piece(piece.start(), piece.duration(), piece.speed(), piece.torque(inertia)));
        }
        return new Course(result);
    }

    private static List<LoadPiece> move(
            Drivetrain drivetrain, LoadEffort effort, Move move, double start, double from) {
        double distance = move.distance().si();
        double duration = move.duration().si();
        if (distance == 0) {
            return List.of(drivetrain.resting(effort, start, duration, from, false));
        }
        List<LoadPiece> pieces = new ArrayList<>();
        double position = from;
        for (NormalisedLaw.Stretch stretch : NormalisedLaw.of(move.law()).stretches()) {
            double length = stretch.length() * duration;
            Polynomial speed = stretch.speed().times(distance / duration).stretched(duration);
            LoadMotion motion = LoadMotion.of(position, speed, length, Math.signum(distance));
            pieces.addAll(drivetrain.moving(effort, start + stretch.start() * duration, motion));
            position = motion.position().at(length);
        }
        return pieces;
    }

    private static LoadEffort effort(Mechanics mechanics, Segment segment) {
        return switch (segment) {
            case Move move -> mechanics.effort(siOrZero(move.payload()), siOrZero(move.processEffort()));
            case Dwell dwell -> mechanics.effort(siOrZero(dwell.payload()), siOrZero(dwell.processEffort()));
        };
    }

    private static double siOrZero(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
