package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
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

    /** Of a controlled stop that asks for more than the drive unit has: the finding that says so. */
    public Finding stopTooHard(String axis, String pointer) {
        return FindingCode.STUDY_STOP_TOO_HARD.at(
                axis, pointer, "derived: intermittent curve at low line", value, allowed);
    }

    /** Whether more than the limit is used. */
    public boolean broken() {
        return DutyLimit.broken(use);
    }
}
