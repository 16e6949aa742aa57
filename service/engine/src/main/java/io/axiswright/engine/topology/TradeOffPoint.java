package io.axiswright.engine.topology;

import io.axiswright.engine.design.KeptGateway;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;

/**
 * A layout on the trade-off curve.
 *
 * @param gatewayCount how many gateways it has
 * @param longestSpur length of its longest spur cable, those of axes to come among them
 * @param cost price of gateways and cables, moves and shared gateways included
 * @param bound proven lower bound: no layout with so little of the measure costs less
 * @param gap what might still be saved at most without more of the measure, as a share of the cost
 * @param method how it was found
 * @param gateways the layout in short, in the form in which a design may keep it; axes to come are left out
 */
public record TradeOffPoint(
        @Bounds(min = 0) int gatewayCount,
        Length longestSpur,
        Money cost,
        Money bound,
        @Bounds(min = 0, max = 1) Ratio gap,
        LayoutMethod method,
        List<KeptGateway> gateways) {

    /** Keeps the list from being changed. */
    public TradeOffPoint {
        gateways = List.copyOf(gateways);
    }
}
