package io.axiswright.engine.duty;

/**
 * The controlled stops of one axis, begun at any instant of its cycle. Between two neighbouring {@link #cuts()} the stop
 * changes smoothly with the instant, and {@link #bend} says how much at most; so a search over the instants can prove that
 * it missed none.
 */
public interface StopModel {

    /** From the start of deceleration to rest, s. */
    double duration();

    /** Instants at which the stop may change abruptly, ascending: 0, the ends of pieces, the period; s. */
    double[] cuts();

    /**
     * The stop begun at an instant; empty for an axis at rest.
     *
     * @param instant when in the cycle, s
     * @param beside an instant strictly inside the stretch between two cuts meant, which tells the two limits at a cut apart, s
     */
    Course from(double instant, double beside);

    /** Those of the cuts at which the stops begun just before and just after may differ, ascending, s. */
    default double[] jumps() {
        return cuts();
    }

    /**
     * How much the stops begun from one instant to another differ; both within one stretch between two cuts.
     *
     * @param lossPerTorqueSquared loss in the motor for each square of torque, W/(N·m)²
     */
    PowerBend bend(double from, double to, double lossPerTorqueSquared);

    /** The same axis stopped within another time, s. */
    StopModel within(double time);
}
