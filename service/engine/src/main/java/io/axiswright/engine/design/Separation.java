package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Axes that must not, or had better not, hang on one gateway, so that not all of them fail with it.
 *
 * @param id the caller's own name for it, unique among the separations
 * @param axes ids of axes, there or reserved; of reserved axes every port belongs to it
 * @param price what it counts for each of them beyond the first that hang on one gateway, in the currency of the catalogue; if
 *     absent, no two of them may
 */
public record Separation(
        String id,
        @AnyOrder @Count(min = 1, max = 256) List<String> axes,
        @Nullable Money price) {

    /** Keeps the list from being changed. */
    public Separation {
        axes = List.copyOf(axes);
    }
}
