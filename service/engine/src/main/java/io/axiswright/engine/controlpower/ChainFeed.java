package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Current;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One chain, or the part of it behind one feed point, as its control supply sees it.
 *
 * @param chain the chain
 * @param feedPoint id of the gateway at which the control supply's cable arrives; absent if no supply could be placed
 * @param supply the control supply that feeds it, by its name in this result; absent if none could be placed
 * @param steadyCurrent current it takes with released brakes held and outputs on
 * @param worstCurrent largest current it takes
 * @param collapseMultiplier by what all its loads could be multiplied before the voltage collapses, in the worst load case;
 *     absent if it cannot collapse or has no cables
 * @param modes what it takes in each mode that exists; empty if it could not be fed
 */
public record ChainFeed(
        String chain,
        @Nullable String feedPoint,
        @Nullable String supply,
        Current steadyCurrent,
        Current worstCurrent,
        @Nullable Double collapseMultiplier,
        List<ModeCurrent> modes) {

    /** Keeps the list from being changed. */
    public ChainFeed {
        modes = List.copyOf(modes);
    }
}
