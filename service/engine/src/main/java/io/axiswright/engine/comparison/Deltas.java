package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What lies between two values of one kind, second minus first; null where they are of none, or not of one. */
final class Deltas {

    private Deltas() {}

    static @Nullable Quantity ofQuantities(@Nullable Object before, @Nullable Object after) {
        if (before instanceof Temperature a && after instanceof Temperature b) {
            // on no scale that has a zero of its own: 5 K lie between 40 and 45 Cel, not 5 Cel
            return new TemperatureRise(b.si() - a.si());
        }
        if (before instanceof ConductorSize a && after instanceof ConductorSize b) {
            return ofQuantities(a.area(), b.area());
        }
        return before instanceof Quantity a && after instanceof Quantity b && a.dimension() == b.dimension()
                ? a.dimension().of(b.si() - a.si())
                : null;
    }

    static @Nullable MoneyDifference ofMoney(@Nullable Object before, @Nullable Object after) {
        return before instanceof Money a
                        && after instanceof Money b
                        && a.currency().equals(b.currency())
                ? new MoneyDifference(b.amount().subtract(a.amount()).toPlainString(), a.currency())
                : null;
    }

    static @Nullable Double ofNumbers(@Nullable Object before, @Nullable Object after) {
        return before instanceof Number a && after instanceof Number b
                ? decimal(b).subtract(decimal(a)).doubleValue()
                : null;
    }

    /** As it is written, so that 0.3 less 0.2 is 0.1. */
    private static BigDecimal decimal(Number number) {
        return new BigDecimal(number.toString());
    }
}
