package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * An end of a circuit: a load, or the mains panel.
 *
 * @param id the load
 * @param pointer JSON Pointer, in the request of the caller, to what it follows from
 * @param length length of the conductors to it
 * @param shortCircuitRating short-circuit current rating of what stands there; absent if not stated
 * @param motorCurrent rated current of a motor there that is fed straight from the line; absent if there is none
 * @param ratingAsked whether what stands there needs a short-circuit current rating; a transformer does not
 */
public record CircuitEnd(
        String id,
        String pointer,
        Length length,
        @Nullable Current shortCircuitRating,
        @Nullable Current motorCurrent,
        boolean ratingAsked) {

    /** An end where something stands that ought to be rated. */
    public CircuitEnd(
            String id,
            String pointer,
            Length length,
            @Nullable Current shortCircuitRating,
            @Nullable Current motorCurrent) {
        this(id, pointer, length, shortCircuitRating, motorCurrent, true);
    }
}
