package io.axiswright.engine.duty;

import io.axiswright.engine.motion.Motion;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/** Pieces of a course whose effort is stated instead of following from the load. */
final class StatedTorque {

    private final Drivetrain drivetrain;
    private final LoadEffort effort;
    private final double start;
    private final Motion.Stretch stretch;
    private final Polynomial stated;
    private final List<LoadPiece> pieces = new ArrayList<>();

    /**
     * A stretch of such a course.
     *
     * @param drivetrain the way from the load to the motor shaft
     * @param effort the load
     * @param start when the stretch starts, s
     * @param stretch speed over the time since
     * @param stated torque or effort over the time since
     */
    StatedTorque(Drivetrain drivetrain, LoadEffort effort, double start, Motion.Stretch stretch, Polynomial stated) {
        this.drivetrain = drivetrain;
        this.effort = effort;
        this.start = start;
        this.stretch = stretch;
        this.stated = stated;
    }

    /** Speed and effort taken at the load, from a position of it, pass through mechanism and gears as the load's own would. */
    List<LoadPiece> atLoad(double from) {
        if (stretch.direction() == 0) {
            Polynomial pull = stated.times(effort.lever(from));
            return List.of(drivetrain.resting(effort, start, stretch.length(), from, pull));
        }
        LoadMotion motion = LoadMotion.of(from, stretch.speed(), stretch.length(), stretch.direction());
        List<ShaftPiece> shaft =
                effort.levers(motion).stream().map(piece -> piece.times(stated)).toList();
        return drivetrain.passing(effort, start, shaft, motion.direction());
    }

    /**
     * Speed and torque taken at the motor's end of the transmission are the piece. The torque of the gear's own inertia is in
     * what was taken there, and comes on top again with all else that turns with the motor.
     *
     * @param position position of the load over the time since the start
     */
    List<LoadPiece> atMotor(Polynomial position) {
        Polynomial acceleration = stretch.speed().derivative();
        Polynomial torque = stated.minus(acceleration.times(drivetrain.gearInertia()));
        back(drivetrain.stages().size(), torque, acceleration, 0, stretch.length(), new AtMotor(position, torque));
        return pieces;
    }

    private record AtMotor(Polynomial position, Polynomial torque) {}

    /** From the motor to the load, to know the pull at the mechanism: the torque and acceleration behind stage k. */
    private void back(int k, Polynomial torque, Polynomial acceleration, double from, double to, AtMotor motor) {
        if (k == 0) {
            pieces.add(LoadPiece.of(
                    start + from,
                    to - from,
                    motor.position.shifted(from),
                    stretch.speed().shifted(from),
                    stretch.speed().derivative().shifted(from),
                    motor.torque.shifted(from),
                    torque.shifted(from),
                    effort.later(from)));
            return;
        }
        Stage stage = drivetrain.stages().get(k - 1);
        Polynomial left = stage.left(torque, acceleration, stretch.direction());
        double[] cuts = Drivetrain.cuts(stage.efficiency(), left, from, to);
        for (int j = 1; j < cuts.length; j++) {
            boolean driving = left.at((cuts[j - 1] + cuts[j]) / 2) * stretch.direction() >= 0;
            Polynomial behind = stage.efficiency().behind(left, driving).times(stage.ratio());
            back(k - 1, behind, acceleration.times(1 / stage.ratio()), cuts[j - 1], cuts[j], motor);
        }
    }
}
