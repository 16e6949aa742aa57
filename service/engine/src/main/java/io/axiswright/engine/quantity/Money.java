package io.axiswright.engine.quantity;

import java.math.BigDecimal;
import java.util.Currency;

/**
 * An amount of money; decimal, never binary.
 *
 * @param amount the amount, not negative
 * @param currency its ISO 4217 alphabetic code
 */
public record Money(BigDecimal amount, String currency) {

    /** Refuses negative amounts and unknown currencies. */
    public Money {
        if (amount.signum() < 0) {
            throw new IllegalArgumentException("an amount of money must not be negative, not " + amount);
        }
        Currency.getInstance(currency);
    }

    /** Nothing, in the given currency. */
    public static Money zero(String currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /**
     * The sum of both.
     *
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException("cannot add " + other.currency + " to " + currency);
        }
        return new Money(amount.add(other.amount), currency);
    }

    /** This amount so many times. */
    public Money times(BigDecimal factor) {
        return new Money(amount.multiply(factor), currency);
    }
}
