package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;
import org.jspecify.annotations.Nullable;

/**
 * The two efficiencies of an element that passes torque.
 *
 * @param driving when the motor drives the load
 * @param backDriving when the load drives the motor; 0: self-locking
 */
record Efficiency(double driving, double backDriving) {

    static final Efficiency LOSSLESS = new Efficiency(1, 1);

    /**
     * Of what a data sheet gives. Without a back-driving efficiency the loss is taken as friction in proportion to the load,
     * which helps when the load drives: 2 − 1/eta, not below 0 (derived; small-angle form of the thread formulas).
     */
    static Efficiency of(double driving, @Nullable Double backDriving) {
        return new Efficiency(driving, backDriving != null ? backDriving : Math.max(0, 2 - 1 / driving));
    }

    boolean lossless() {
        return driving == 1 && backDriving == 1;
    }

    boolean selfLocking() {
        return backDriving == 0;
    }

    /** The torque wanted on the motor's side of the element for a torque wanted on the load's side, ratio left out. */
    Polynomial passed(Polynomial torque, boolean motorDrives) {
        return torque.times(motorDrives ? 1 / driving : backDriving);
    }
}
