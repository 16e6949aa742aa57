package io.axiswright.engine.energy;

import io.axiswright.engine.design.Operation;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Power;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import org.jspecify.annotations.Nullable;

/** A year of operation: turns mean powers into energy and cost. */
record Year(Operation operation) {

    private static final BigDecimal JOULES_PER_KILOWATT_HOUR = BigDecimal.valueOf(3_600_000);

    /** The last digits of a binary number are those of its conversions. */
    private static final MathContext WITHOUT_NOISE = new MathContext(12);

    Energy energy(double watts) {
        return new Energy(watts * operation.timePerYear().si());
    }

    YearlyUse use(double watts) {
        Energy energy = energy(watts);
        return new YearlyUse(new Power(watts), energy, cost(energy));
    }

    private @Nullable Money cost(Energy energy) {
        Money price = operation.energyPrice();
        return price == null || energy.si() < 0 ? null : rounded(price(price, energy), price.currency());
    }

    /** What a mean power costs in a year, not rounded. */
    BigDecimal price(Money perKilowattHour, double watts) {
        return price(perKilowattHour, energy(watts));
    }

    private static BigDecimal price(Money perKilowattHour, Energy energy) {
        return perKilowattHour
                .amount()
                .multiply(BigDecimal.valueOf(energy.si()))
                .divide(JOULES_PER_KILOWATT_HOUR, MathContext.DECIMAL64);
    }

    /** An amount in whole minor units of its currency; a half is one whatever unit a length was stated in. */
    static Money rounded(BigDecimal amount, String currency) {
        int digits = Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits());
        return new Money(amount.round(WITHOUT_NOISE).setScale(digits, RoundingMode.HALF_UP), currency);
    }
}
