package io.axiswright.engine.comparison;

/**
 * A difference of two amounts of money, which may be negative.
 *
 * @param amount second minus first, in decimal figures such as "-194.32"
 * @param currency ISO 4217 alphabetic code of both
 */
public record MoneyDifference(String amount, String currency) {}
