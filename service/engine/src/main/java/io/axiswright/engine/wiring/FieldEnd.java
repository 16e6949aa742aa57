package io.axiswright.engine.wiring;

import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * A connector to be made on the machine.
 *
 * @param asker who asked for the cable
 * @param cable catalogue id of the cable
 * @param rework whether a moulded end has to be cut off for it, because it passes no gland, or not the conduit, on its way
 * @param parts catalogue id of what makes the connector; absent if the catalogue offers nothing
 * @param tool catalogue id of the tool; absent if the catalogue has none
 * @param labour the work; absent if unknown
 */
public record FieldEnd(
        String asker,
        String cable,
        boolean rework,
        @Nullable String parts,
        @Nullable String tool,
        @Nullable Time labour) {}
