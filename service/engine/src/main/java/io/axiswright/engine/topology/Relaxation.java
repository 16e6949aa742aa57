package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;

/**
 * A change that lets a layout exist.
 *
 * @param widenings what has to be widened, each by as little as was found to do
 * @param cost price of the gateways and cables of the layout that was planned with it. A cable longer than the catalogue has counts
 *     as the longest of its use, by the metre; what the catalogue has no price for (a host port, a place, a stop input the less)
 *     counts nothing
 * @param gap what might still be saved at most with this change, as a share of the cost
 */
public record Relaxation(
        List<Widening> widenings,
        Money cost,
        @Bounds(min = 0, max = 1) Ratio gap) {

    /** Keeps the list from being changed. */
    public Relaxation {
        widenings = List.copyOf(widenings);
    }
}
