package io.axiswright.engine.duty;

import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/** Pieces of a course whose effort is stated instead of following from the load. */
final class StatedTorque {

    private StatedTorque() {}

    /** Speed and torque taken at the motor's end of the transmission are the piece. */
    static LoadPiece atMotor(LoadEffort effort, double start, Motion.Stretch stretch, Polynomial torque) {
        return LoadPiece.of(
                start, stretch.length(), stretch.speed(), stretch.speed().derivative(), torque, effort);
    }

    /** Speed and effort taken at the load pass through mechanism and gear as the load's own would. */
    static List<LoadPiece> atLoad(
            Drivetrain drivetrain, LoadEffort effort, double start, Motion.Stretch stretch, Polynomial stated) {
        if (stretch.direction() == 0) {
            Polynomial torque = stated.times(1 / drivetrain.motorTurn());
            return List.of(LoadPiece.of(start, stretch.length(), Polynomial.ZERO, Polynomial.ZERO, torque, effort));
        }
        return drivetrain.passing(effort, stated, start, stretch.length(), stretch.speed(), stretch.direction());
    }
}
