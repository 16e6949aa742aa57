package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * Bounds of even decelerations of a load whose torque does not depend on its position: the torque is linear in the speed the
 * stop starts from and in the speed left, but for the efficiencies, which turn with the flow of power.
 *
 * @param drivetrain the way from the load to the motor
 * @param effort the load
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 */
record EvenStopRange(Drivetrain drivetrain, EvenEffort effort, double inertia, double duration) {

    /** The range over stops begun between two times since the start of a piece, s. */
    StopRange of(LoadPiece piece, double a, double b) {
        Polynomial speed = piece.speed();
        double fastest = speed.largestMagnitude(a, b);
        double rate = piece.acceleration().largestMagnitude(a, b);
        double bend = piece.acceleration().derivative().largestMagnitude(a, b);
        double perSpeed = torquePerSpeed();
        double direction = Math.signum(speed.at((a + b) / 2));
        int turning = turning(speed.at(a), speed.at(b), direction);
        return new StopRange(
                fastest,
                rate,
                bend,
                perSpeed * fastest + rest(),
                perSpeed * rate,
                perSpeed * bend,
                2 * turning * perSpeed * rate);
    }

    /** The most the torque changes with the motor speed the stop starts from, N·m·s. */
    private double torquePerSpeed() {
        double ratio = drivetrain.ratio();
        double travel = effort.travel();
        double torque = (effort.mass() / duration + effort.viscous()) * travel * travel / ratio;
        double turns = 1 / ratio;
        for (Stage stage : drivetrain.stages()) {
            turns *= stage.ratio();
            torque = steepest(stage.efficiency()) * torque / stage.ratio() + stage.inertia() * turns / duration;
        }
        return inertia / duration + torque;
    }

    /** The most of the torque that has nothing to do with speed, N·m. */
    private double rest() {
        double torque = (Math.abs(effort.gravity() + effort.process()) + effort.coulomb()) * Math.abs(effort.travel());
        for (Stage stage : drivetrain.stages()) {
            torque = steepest(stage.efficiency()) * torque / stage.ratio() + stage.drag();
        }
        return torque;
    }

    private static double steepest(Efficiency efficiency) {
        return Math.max(1 / efficiency.driving(), Math.abs(efficiency.backDriving()));
    }

    /**
     * Through how many elements with losses the power may change its direction within these stops or from one to the other:
     * the corners of the speeds tell.
     */
    private int turning(double fromSpeed, double toSpeed, double direction) {
        List<Stage> stages = drivetrain.stages();
        int[] driving = new int[stages.size()];
        double travel = effort.travel();
        double ratio = drivetrain.ratio();
        for (double start : new double[] {fromSpeed, toSpeed}) {
            for (double left : new double[] {start, 0}) {
                double deceleration = -start / duration / ratio;
                double torque = (effort.mass() * deceleration * travel
                                + effort.viscous() * left / ratio * travel
                                + effort.gravity()
                                + effort.process()
                                + direction * effort.coulomb())
                        * travel;
                double turns = 1;
                for (int k = 0; k < stages.size(); k++) {
                    Stage stage = stages.get(k);
                    boolean drives = torque * direction >= 0;
                    driving[k] += drives ? 1 : 0;
                    turns *= stage.ratio();
                    Efficiency efficiency = stage.efficiency();
                    torque = torque * (drives ? 1 / efficiency.driving() : efficiency.backDriving()) / stage.ratio()
                            + deceleration * turns * stage.inertia()
                            + direction * stage.drag();
                }
            }
        }
        int count = 0;
        for (int k = 0; k < driving.length; k++) {
            count += driving[k] % 4 != 0 && !stages.get(k).efficiency().lossless() ? 1 : 0;
        }
        return count;
    }
}
