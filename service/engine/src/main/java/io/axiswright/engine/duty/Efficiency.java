package io.axiswright.engine.duty;

import io.axiswright.engine.design.ScrewThread;
import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import org.jspecify.annotations.Nullable;

/**
 * The two efficiencies of an element that passes torque.
 *
 * @param driving when the motor drives the load
 * @param backDriving when the load drives the motor; at 0 or below it is self-locking, and below 0 the motor must push even
 *     where the load would drive
 */
record Efficiency(double driving, double backDriving) {

    static final Efficiency LOSSLESS = new Efficiency(1, 1);

    /**
     * Of what a data sheet gives. Without a back-driving efficiency the loss is taken as friction in proportion to the load,
     * which helps when the load drives: 2 − 1/eta (derived; small-angle form of the thread formulas).
     */
    static Efficiency of(double driving, @Nullable Double backDriving) {
        return new Efficiency(driving, backDriving != null ? backDriving : 2 - 1 / driving);
    }

    /**
     * Of a thread that slides, its collar included: eta = tan(lambda)/tan(lambda + phi) raising, tan(lambda − phi)/tan(lambda)
     * lowering, phi being the friction angle on the flank (Shigley, Mechanical Engineering Design, 9th ed., eq. 8-1 to 8-6).
     */
    static Efficiency of(ScrewThread thread, double lead) {
        double diameter = thread.pitchDiameter().si();
        double slope = lead / (Math.PI * diameter);
        double lambda = Math.atan(slope);
        double phi = Math.atan(thread.friction() / Math.cos(thread.flankAngle().si()));
        double collar = thread.collar() == null
                ? 0
                : thread.collar().friction() * thread.collar().meanDiameter().si() / diameter;
        return new Efficiency(slope / (Math.tan(lambda + phi) + collar), (Math.tan(lambda - phi) - collar) / slope);
    }

    boolean lossless() {
        return driving == 1 && backDriving == 1;
    }

    /**
     * The back-driving efficiency of a motion that nothing drives. A stated 0 stands for all below it, for nothing below can be stated:
     * then friction in proportion to the load, as the other efficiency tells it, resists the motion, if it tells of a lock at all.
     */
    double coasting() {
        return backDriving == 0 ? Math.min(0, 2 - 1 / driving) : backDriving;
    }

    boolean selfLocking() {
        return backDriving <= 0;
    }

    /** The torque wanted on the motor's side of the element for a torque wanted on the load's side, ratio left out. */
    Polynomial passed(Polynomial torque, boolean motorDrives) {
        return torque.times(factor(motorDrives));
    }

    /** Torque on the motor's side over torque on the load's side, ratio left out. */
    double factor(boolean motorDrives) {
        return motorDrives ? 1 / driving : backDriving;
    }

    /** The same over a range of torques, for a direction of motion. */
    Enclosure passed(Enclosure torque, double direction) {
        return direction < 0 ? torque.bent(1 / driving, backDriving) : torque.bent(backDriving, 1 / driving);
    }

    /**
     * The torque behind the element, on the load's side, for one on the motor's side, ratio left out. Nothing passes a
     * self-locking element backwards: a torque against its motion is then taken whole.
     */
    Polynomial behind(Polynomial torque, boolean motorDrives) {
        double passed = motorDrives ? driving : selfLocking() ? 1 : 1 / backDriving;
        return torque.times(passed);
    }
}
