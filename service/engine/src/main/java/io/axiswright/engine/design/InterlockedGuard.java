package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A guard that demands a stop when it is opened, and that is not locked.
 *
 * @param openingReach how far one reaches through the opening at which the stop is demanded: the safety distance that ISO 13857
 *     gives for it
 */
@JsonTypeName("INTERLOCKED_GUARD")
public record InterlockedGuard(@Bounds(min = 0, max = 2) Length openingReach) implements Detection {}
