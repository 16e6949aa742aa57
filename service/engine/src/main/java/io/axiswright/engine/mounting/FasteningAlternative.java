package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningKind;
import io.axiswright.engine.quantity.Force;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * A fastening that would carry the required torque.
 *
 * @param kind what it is
 * @param engagedLength engaged length it needs; absent for a clamp or bushing
 * @param preload preload of all its screws together; absent for others
 * @param reason why it serves
 */
public record FasteningAlternative(
        FasteningKind kind,
        @Nullable Length engagedLength,
        @Nullable Force preload,
        String reason) {}
