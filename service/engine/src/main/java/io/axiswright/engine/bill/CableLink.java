package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A cable, or a direct coupling, with what is at its two ends.
 *
 * @param item catalogue id of the cable; absent where the two are coupled without one
 * @param from owner of the ports, or the terminal, at one end
 * @param to owner of the ports, or the terminal, at the other
 * @param length length of a piece of bulk cable; absent for a cable of fixed length
 */
public record CableLink(
        @Nullable String item,
        String from,
        String to,
        @Bounds(min = 0) @Nullable Length length) {

    /** A cable of fixed length, or a direct coupling. */
    public CableLink(@Nullable String item, String from, String to) {
        this(item, from, to, null);
    }
}
