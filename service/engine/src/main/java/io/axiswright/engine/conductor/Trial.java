package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A conductor size that was tried.
 *
 * @param size the size
 * @param conductorsPerLine conductors in parallel on each line
 * @param failed the first limit it failed; absent for the size that was chosen
 * @param value what it was held against that limit with
 * @param limit the limit
 */
public record Trial(
        ConductorSize size,
        int conductorsPerLine,
        @Nullable Limit failed,
        @Nullable Quantity value,
        @Nullable Quantity limit) {

    static Trial of(Judge judge, int k, @Nullable Breach breach) {
        return breach == null
                ? new Trial(judge.size(k), judge.parallel(), null, null, null)
                : new Trial(judge.size(k), judge.parallel(), breach.limit(), breach.value(), breach.bound());
    }
}
