package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A limit of a request that can be set aside by itself.
 *
 * @param member index of the axis, place or stop zone it is about; 0 where it is about the whole network
 * @param told the limit in the caller's words
 */
record NamedLimit(int member, ClashingLimit told) {

    static NamedLimit whole(LimitKind kind, String subject, String pointer, @Nullable Quantity available) {
        return new NamedLimit(0, new ClashingLimit(kind, subject, pointer, available));
    }

    LimitKind kind() {
        return told.limit();
    }
}
