package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.quantity.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.stream.Stream;

/**
 * Whole-number money for the solvers: as many decimals as the prices have, but never so many that a whole layout could
 * not be added up. Decimals that do not fit are cut off, so a bound stays a bound.
 */
final class MoneyScale {

    private static final BigDecimal MOST_UNITS = BigDecimal.valueOf(1L << 44);

    private final String currency;
    private final int decimals;
    private final int shownDecimals;

    /**
     * A scale.
     *
     * @param all every price there is
     * @param mostItems how many of them a layout has at most
     */
    MoneyScale(String currency, Stream<BigDecimal> all, int mostItems) {
        this.currency = currency;
        var prices = all.toList();
        int needed = prices.stream()
                .mapToInt(price -> price.stripTrailingZeros().scale())
                .max()
                .orElse(0);
        var dearest = prices.stream().reduce(BigDecimal.ZERO, BigDecimal::max).multiply(BigDecimal.valueOf(mostItems));
        int scale = needed;
        while (dearest.scaleByPowerOfTen(scale).compareTo(MOST_UNITS) > 0) {
            scale--;
        }
        this.decimals = scale;
        this.shownDecimals =
                Math.max(needed, Math.max(0, Currency.getInstance(currency).getDefaultFractionDigits()));
    }

    /** Whether both count in the same unit. */
    boolean countsAs(MoneyScale other) {
        return currency.equals(other.currency) && decimals == other.decimals;
    }

    static BigDecimal price(Item item) {
        return item.price() == null ? BigDecimal.ZERO : item.price().amount();
    }

    long units(GatewayType type) {
        return units(price(type));
    }

    long units(LaidCable cable) {
        return units(cable.amount());
    }

    long units(BigDecimal amount) {
        return amount.scaleByPowerOfTen(decimals)
                .setScale(0, RoundingMode.FLOOR)
                .longValueExact();
    }

    Money money(long units) {
        return money(BigDecimal.valueOf(units).scaleByPowerOfTen(-decimals));
    }

    Money money(BigDecimal amount) {
        return new Money(amount.setScale(shownDecimals, RoundingMode.FLOOR), currency);
    }
}
