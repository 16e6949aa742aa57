package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * How much of a limit is used.
 *
 * @param limit which limit
 * @param value what is asked for
 * @param allowed what is allowed
 * @param use value over allowed; stated up to 1000
 * @param instant when in the cycle, where the limit is judged instant by instant
 */
public record LimitUse(
        DutyLimit limit,
        Quantity value,
        Quantity allowed,
        double use,
        @Nullable Time instant) {

    /** Whether more than the limit is used. */
    public boolean broken() {
        return DutyLimit.broken(use);
    }
}
