package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.motion.ShaftTravel;
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
 * @param reach how far it comes under each of its efforts
 * @param gravity whether gravity drives it
 */
record AxisLoad(
        Drivetrain drivetrain,
        List<LoadPiece> pieces,
        double period,
        double netTravel,
        double travelled,
        Reach reach,
        boolean gravity) {

    static AxisLoad of(Axis axis) {
        return of(axis, CycleChange.NONE);
    }

    /** Of an axis whose segments move and carry otherwise than stated. */
    static AxisLoad of(Axis axis, CycleChange change) {
        Drivetrain drivetrain = Drivetrain.of(axis);
        List<LoadPiece> pieces = new ArrayList<>();
        double start = 0;
        double stated = 0;
        double position = drivetrain.mechanics().start();
        double travelled = 0;
        List<Reach.Way> ways = new ArrayList<>();
        boolean gravity = false;
        for (Segment segment : axis.cycle().segments()) {
            Motion motion = change.motions().apply(segment);
            LoadEffort effort = drivetrain
                    .mechanics()
                    .effort(change.payloads().applyAsDouble(segment), siOrZero(segment.processEffort()));
            if (effort.timed()) {
                double duration = Motion.of(segment).duration();
                effort = effort.during(stated, duration, motion.duration());
                stated += duration;
            }
            boolean held = segment instanceof Dwell dwell
                    && dwell.brakeHolds()
                    && axis.drive().holdingBrake();
            double from = position;
            double lowest = position;
            double highest = position;
            for (Motion.Stretch stretch : motion.stretches()) {
                Polynomial way = way(axis, drivetrain, segment, stretch, position);
                pieces.addAll(
                        pieces(drivetrain, effort.later(stretch.start()), change, segment, stretch, start, way, held));
                double next = way.at(stretch.length());
                travelled += Math.abs(next - position);
                position = next;
                lowest = Math.min(lowest, position);
                highest = Math.max(highest, position);
            }
            if (!atMotor(segment)) {
                position = from + motion.travel(); // the sum of the stretches without their rounding
            }
            start += motion.duration();
            ways.add(new Reach.Way(effort, lowest, highest));
            gravity |= effort.falls();
        }
        return new AxisLoad(
                drivetrain,
                List.copyOf(pieces),
                start,
                position - drivetrain.mechanics().start(),
                travelled,
                new Reach(ways),
                gravity);
    }

    /** The largest torque a brake on the motor shaft may have to hold, N·m. */
    double holdingTorque() {
        return drivetrain.holdingTorque(reach.holding());
    }

    /** The largest inertia of load, mechanism and gear at the motor shaft, kg·m². */
    double reflectedInertia() {
        return drivetrain.reflectedInertia(reach.inertia());
    }

    /** The largest torque the load asks for at the mechanism's shaft, moving or held, before any loss, N·m. */
    double hardestPull() {
        double hardest = 0;
        for (LoadPiece piece : pieces) {
            hardest = Math.max(hardest, piece.pull().largestMagnitude(0, piece.duration()));
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

    private static List<LoadPiece> pieces(
            Drivetrain drivetrain,
            LoadEffort effort,
            CycleChange change,
            Segment segment,
            Motion.Stretch stretch,
            double segmentStart,
            Polynomial way,
            boolean held) {
        double start = segmentStart + stretch.start();
        double from = way.at(0);
        if (stretch.effort() != null) {
            var stated = new StatedTorque(drivetrain, effort, start, stretch, stretch.effort());
            return atMotor(segment) ? stated.atMotor(way) : stated.atLoad(from);
        }
        if (stretch.direction() == 0) {
            return drivetrain.resting(effort, start, stretch.length(), from, held);
        }
        var moving = new LoadMotion(way, stretch.length(), stretch.direction());
        return drivetrain.passing(effort, start, change.shafts().apply(effort, moving), stretch.direction());
    }

    /** Position of the load over the time since a stretch began; at rest it stays whatever the rounding of its speed. */
    private static Polynomial way(
            Axis axis, Drivetrain drivetrain, Segment segment, Motion.Stretch stretch, double from) {
        if (stretch.direction() == 0) {
            return Polynomial.of(from);
        }
        Polynomial travelled = stretch.speed().antiderivative();
        return atMotor(segment)
                ? ShaftTravel.of(axis.mechanism(), from, travelled.times(1 / drivetrain.ratio()))
                : travelled.plus(from);
    }

    private static boolean atMotor(Segment segment) {
        return segment instanceof TorqueCourse course && course.at() == TorquePlace.MOTOR_SHAFT;
    }

    private static double siOrZero(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
