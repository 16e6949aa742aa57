package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Payload;
import org.jspecify.annotations.Nullable;

/**
 * How much an axis can carry at most.
 *
 * @param verdict whether there is an answer; not applicable to cycles that state all their torque
 * @param added what is carried beyond what is asked, mass or moment of inertia: in every segment that states a payload, or
 *     throughout the cycle if none does. Negative, and no payload below nothing, where the asked one is too large; searched
 *     up to 1e6 kg or kg·m². Absent without an answer
 * @param largest the largest payload then carried; absent without an answer
 * @param limit the limit that breaks beyond it; absent without an answer
 */
public record PayloadReserve(
        ReserveVerdict verdict,
        @Nullable Payload added,
        @Nullable Payload largest,
        @Nullable DutyLimit limit) {

    /** Without an answer. */
    static PayloadReserve without(ReserveVerdict verdict) {
        return new PayloadReserve(verdict, null, null, null);
    }
}
