package io.axiswright.engine.stopping;

import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * How one axis comes to rest, each figure from the instant of the cycle that is the worst for it. Distances are ways of the
 * load, there and back: metres of linear axes, angles of rotary ones.
 *
 * @param axis its id
 * @param stoppingTime from the demand, or the loss of power, to rest; absent if it never rests, and if its drive unit cannot stop it in
 *     the time of its stop zone
 * @param distance the longest way found from then to rest; absent likewise
 * @param provenDistance no stop from any instant is longer; absent likewise
 * @param worstInstant when in the axis's cycle the longest way begins, its reaction time over; absent likewise
 * @param fall the longest way in the direction in which gravity drives it; absent if gravity does not, for controlled stops, and
 *     if it never rests
 * @param brakeEnergy the most energy its holding brake takes up; absent for controlled stops, without a brake, and if it never
 *     rests
 * @param gearTorque greatest torque at the output of its gear unit while its holding brake, with its full torque, stops the
 *     turning shaft; absent for controlled stops, without a brake or a gear unit, and if it never rests
 */
public record AxisStopping(
        String axis,
        @Nullable Time stoppingTime,
        @Nullable Displacement distance,
        @Nullable Displacement provenDistance,
        @Nullable Time worstInstant,
        @Nullable Displacement fall,
        @Nullable Energy brakeEnergy,
        @Nullable Torque gearTorque) {

    /** Of an axis that never rests, or whose drive unit cannot make the stop asked of it. */
    static AxisStopping unknown(String axis) {
        return new AxisStopping(axis, null, null, null, null, null, null, null);
    }
}
