package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * A layout with what it costs and what is proven of it.
 *
 * @param gateways the gateways
 * @param changes what differs from the kept layout
 * @param cost price of gateways and cables
 * @param moving price of moves
 * @param sharing price of shared gateways
 * @param all the three together
 * @param bound proven lower bound of that
 * @param gap what might still be saved, as a share
 * @param proven whether the bound is reached
 */
record Appraisal(
        List<PlacedGateway> gateways,
        List<LayoutChange> changes,
        Money cost,
        Money moving,
        Money sharing,
        Money all,
        Money bound,
        Ratio gap,
        boolean proven) {

    /**
     * Appraises a layout.
     *
     * @param bound in the model's money unit
     */
    static Appraisal of(LayoutProblem problem, Layout layout, long bound) {
        TopologyRequest request = problem.request();
        MoneyScale scale = problem.money();
        List<PlacedGateway> gateways = GatewayList.of(request, problem.routes(), problem.model(), layout);
        List<LayoutChange> changes = LayoutChanges.of(request, gateways);
        Money cost = scale.money(Prices.of(request, gateways));
        BigDecimal moving = request.movePrice().multiply(BigDecimal.valueOf(LayoutChanges.moves(changes)));
        BigDecimal sharing = SharedGateways.price(request, gateways);
        Money all = scale.money(cost.amount().add(moving).add(sharing));
        boolean proven = bound >= Score.of(problem.model(), layout).cost();
        Money least = proven ? all : scale.money(bound);
        return new Appraisal(
                gateways,
                changes,
                cost,
                scale.money(moving),
                scale.money(sharing),
                all,
                least,
                gap(all, least),
                proven);
    }

    private static Ratio gap(Money cost, Money bound) {
        if (cost.amount().signum() == 0) {
            return new Ratio(0);
        }
        BigDecimal saving = cost.amount().subtract(bound.amount()).max(BigDecimal.ZERO);
        return new Ratio(saving.divide(cost.amount(), MathContext.DECIMAL64).doubleValue());
    }
}
