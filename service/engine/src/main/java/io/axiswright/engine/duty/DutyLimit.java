package io.axiswright.engine.duty;

/** What a drive unit must hold, in the order in which it is tried: what rules a unit out soonest comes first. */
public enum DutyLimit {
    /** It can be fed from the mains, as wished; value and limit are voltages. */
    FEED,
    /** The peak speed is below the highest input speed of its gear unit; value and limit are speeds. */
    GEAR_SPEED,
    /** The rms torque at the output of its gear unit is below its nominal torque; value and limit are torques. */
    GEAR_NOMINAL,
    /** The highest torque at the output of its gear unit is below its peak torque; value and limit are torques. */
    GEAR_PEAK,
    /**
     * The highest torque at the output of its gear unit in a controlled stop is below its emergency-stop torque; value and
     * limit are torques, the instant is when in the cycle the stop begins.
     */
    GEAR_STOP,
    /** The peak speed is on the intermittent curve at low line; value and limit are speeds. */
    SPEED,
    /** Its holding brake holds the load with margin; value and limit are torques. */
    BRAKE,
    /**
     * The rms torque is under the derated continuous curve at the rms speed; value and limit are torques, or speeds where the
     * rms speed lies beyond the curve.
     */
    CONTINUOUS,
    /**
     * The whole course is under the intermittent curve at low line; value and limit are torques at the worst instant. Beyond
     * the curve its last torque counts: that the speed is too high is the limit SPEED.
     */
    INTERMITTENT,
    /** The winding stays cool enough over the repeating cycle; value and limit are temperature rises. */
    WINDING,
    /**
     * The mechanism and the shaft of the drive unit bear it: critical speed and buckling of a screw, life of its nut, strands of a
     * belt, radial load and bearing of the shaft, as far as they are stated. It binds reserves only; what the cycle as asked does to
     * them is told by findings of their own and rules no drive unit out.
     */
    MECHANISM;

    /** Uses are stated up to this; beyond it, or where the limit is nothing, the unit plainly does not do. */
    static final double HIGHEST_USE = 1000;

    /** A use over 1 by no more than this is rounding. */
    static final double ROUNDING = 1e-12;

    /** Which share of a limit is used. */
    static double use(double value, double limit) {
        if (value <= 0) {
            return 0;
        }
        return limit <= value / HIGHEST_USE ? HIGHEST_USE : value / limit;
    }

    /** Whether using less of it is worth anything: a voltage either suits or does not, so it makes no candidate better. */
    boolean leavesMargin() {
        return this != FEED;
    }

    /** Whether a use breaks its limit. */
    static boolean broken(double use) {
        return use > 1 + ROUNDING;
    }
}
