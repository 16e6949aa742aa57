package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Ratio;
import java.util.List;

/** What the layout planned for a relaxation costs, and how far from the cheapest it may be. */
final class Priced {

    private Priced() {}

    static Relaxation of(MoneyScale money, LayoutModel model, Layout layout, long bound, List<Widening> widenings) {
        long units = Score.of(model, layout).cost();
        Money cost = money.money(units);
        double gap = units == 0 ? 0 : (double) Math.max(0, units - bound) / units;
        return new Relaxation(widenings, cost, new Ratio(gap));
    }
}
