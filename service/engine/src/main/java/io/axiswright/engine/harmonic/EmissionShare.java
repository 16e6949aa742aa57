package io.axiswright.engine.harmonic;

/**
 * A harmonic current over the reference current.
 *
 * @param quantity {@code i3} to {@code i13} by order, {@code thc} for orders 2 to 40 together, {@code pwhc} for 14 to 40 weighted
 *     with their orders
 * @param share in the worst line
 * @param limit highest share at the short-circuit ratio of the machine
 */
public record EmissionShare(String quantity, double share, double limit) {}
