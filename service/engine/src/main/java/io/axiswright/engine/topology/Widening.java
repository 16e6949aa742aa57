package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One limit, widened.
 *
 * @param limit which limit
 * @param subject what it is about: the id of an axis, of a place or of a stop zone, or "the network". For one more place the id of the
 *     axis at whose position it was tried
 * @param pointer JSON Pointer (RFC 6901) to its place in the request
 * @param available how much there is; absent where nothing is counted or measured and the limit has to be given up
 * @param needed how much does; absent with it
 */
public record Widening(
        LimitKind limit,
        String subject,
        String pointer,
        @Nullable Quantity available,
        @Nullable Quantity needed) {}
