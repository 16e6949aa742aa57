package io.axiswright.engine.braking;

import io.axiswright.engine.catalogue.BrakingUnit;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Temperature;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The cheapest braking unit that holds one bus.
 *
 * @param chosen the trial of the unit that fits; absent if none does
 * @param rejected those tried before it, cheapest first
 */
record UnitChoice(@Nullable UnitTrial chosen, List<RejectedUnit> rejected) {

    /** Cheapest first; without a price last; amounts in different currencies do not compare, so currencies by name. */
    private static final Comparator<BrakingUnit> CHEAPEST_FIRST = Comparator.comparing(UnitChoice::currency)
            .thenComparing(UnitChoice::amount)
            .thenComparing(BrakingUnit::id);

    /** Tries units, cheapest first, until one fits. */
    static UnitChoice of(List<BrakingUnit> units, Bus bus, GroupLoads loads, Temperature ambient) {
        List<RejectedUnit> rejected = new ArrayList<>();
        for (BrakingUnit unit : units.stream().sorted(CHEAPEST_FIRST).toList()) {
            UnitTrial trial = UnitTrial.of(unit, bus, loads, ambient);
            RejectedUnit why = trial.rejected();
            if (why == null) {
                return new UnitChoice(trial, rejected);
            }
            rejected.add(why);
        }
        return new UnitChoice(null, rejected);
    }

    private static String currency(BrakingUnit unit) {
        Money price = unit.price();
        return price == null ? "~" : price.currency(); // "~" sorts after every currency code
    }

    private static BigDecimal amount(BrakingUnit unit) {
        Money price = unit.price();
        return price == null ? BigDecimal.ZERO : price.amount();
    }
}
