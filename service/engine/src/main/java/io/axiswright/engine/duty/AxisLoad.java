package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Dwell;
import io.axiswright.engine.design.Segment;
import io.axiswright.engine.design.TorqueCourse;
import io.axiswright.engine.design.TorquePlace;
import io.axiswright.engine.motion.Motion;
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

    /** Weights below this share of the moved mass's own are rounding of an angle. */
    private static final double LEAST_SLOPE = 1e-9;

    static AxisLoad of(Axis axis) {
        Drivetrain drivetrain = Drivetrain.of(axis);
        List<LoadPiece> pieces = new ArrayList<>();
        double start = 0;
        double netTravel = 0;
        double travelled = 0;
        double holding = 0;
        double mass = 0;
        boolean gravity = false;
        for (Segment segment : axis.cycle().segments()) {
            LoadEffort effort =
                    drivetrain.mechanics().effort(siOrZero(segment.payload()), siOrZero(segment.processEffort()));
            Motion motion = Motion.of(segment);
            boolean atMotor = segment instanceof TorqueCourse course && course.at() == TorquePlace.MOTOR_SHAFT;
            double scale = atMotor ? 1 / drivetrain.motorTurn() : 1;
            boolean held = segment instanceof Dwell dwell
                    && dwell.brakeHolds()
                    && axis.drive().holdingBrake();
            for (Motion.Stretch stretch : motion.stretches()) {
                pieces.addAll(pieces(drivetrain, effort, stretch, start, held, atMotor));
            }
            netTravel += scale * motion.travel();
            travelled += scale * motion.travelled();
            start += motion.duration();
            holding = Math.max(holding, effort.largestHolding());
            mass = Math.max(mass, effort.mass());
            gravity |= Math.abs(effort.gravity()) > LEAST_SLOPE * Mechanics.FREE_FALL * effort.mass();
        }
        return new AxisLoad(
                drivetrain,
                List.copyOf(pieces),
                start,
                netTravel,
                travelled,
                drivetrain.holdingTorque(holding),
                drivetrain.reflectedInertia(mass),
                gravity);
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
            Motion.Stretch stretch,
            double segmentStart,
            boolean held,
            boolean atMotor) {
        double start = segmentStart + stretch.start();
        if (stretch.effort() != null) {
            return atMotor
                    ? List.of(StatedTorque.atMotor(effort, start, stretch, stretch.effort()))
                    : StatedTorque.atLoad(drivetrain, effort, start, stretch, stretch.effort());
        }
        return stretch.direction() == 0
                ? List.of(drivetrain.resting(effort, start, stretch.length(), held))
                : drivetrain.moving(effort, start, stretch.length(), stretch.speed(), stretch.direction());
    }

    private static double siOrZero(@Nullable Quantity quantity) {
        return quantity == null ? 0 : quantity.si();
    }
}
