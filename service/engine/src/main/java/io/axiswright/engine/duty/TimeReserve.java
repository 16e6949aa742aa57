package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How fast an axis can run at most.
 *
 * @param verdict whether there is an answer; not applicable to cycles that state their torque, for it would change with time
 *     in a way nothing says, and to cycles in which nothing moves
 * @param timeFactor what the times are multiplied by, between 0.001 and 1000; speeds are divided by it, accelerations by its
 *     square. Absent without an answer
 * @param movingTime how long all that moves then takes together; absent without an answer
 * @param cyclePeriod how long the cycle then lasts; absent without an answer
 * @param cycleRate how often it then runs; absent without an answer
 * @param limit the limit that breaks beyond it; absent without an answer
 */
public record TimeReserve(
        ReserveVerdict verdict,
        @Nullable Double timeFactor,
        @Nullable Time movingTime,
        @Nullable Time cyclePeriod,
        @Nullable Frequency cycleRate,
        @Nullable DutyLimit limit) {

    /** Without an answer. */
    static TimeReserve without(ReserveVerdict verdict) {
        return new TimeReserve(verdict, null, null, null, null, null);
    }
}
