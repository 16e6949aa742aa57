package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A conductor size that was tried.
 *
 * @param size the size
 * @param failed the first limit it failed; absent for the size that was chosen
 * @param value what it was held against that limit with
 * @param limit the limit
 */
public record Trial(
        ConductorSize size,
        @Nullable Limit failed,
        @Nullable Quantity value,
        @Nullable Quantity limit) {}
