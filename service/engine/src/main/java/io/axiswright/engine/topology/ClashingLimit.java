package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One of the limits that cannot all be met.
 *
 * @param limit which limit
 * @param subject what it is about: the id of an axis, of a place or of a stop zone, or "the network"
 * @param pointer JSON Pointer (RFC 6901) to its place in the request
 * @param available how much there is; absent where nothing is counted or measured
 */
public record ClashingLimit(
        LimitKind limit,
        String subject,
        String pointer,
        @Nullable Quantity available) {}
