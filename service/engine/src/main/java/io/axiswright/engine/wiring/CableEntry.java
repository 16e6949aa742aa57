package io.axiswright.engine.wiring;

import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A cable where it enters an enclosure.
 *
 * @param asker who asked for the cable
 * @param cable catalogue id of the cable
 * @param enclosure the enclosure: "mains panel" or the id of a place
 * @param gland catalogue id of the gland; absent if none holds the cable
 * @param end width of the narrower end of the cable, by which it is drawn in; absent if that end is bare, or not stated
 * @param passes whether that end passes the gland; if not, it is cut off and made anew
 */
public record CableEntry(
        String asker,
        String cable,
        String enclosure,
        @Nullable String gland,
        @Nullable Length end,
        boolean passes) {}
