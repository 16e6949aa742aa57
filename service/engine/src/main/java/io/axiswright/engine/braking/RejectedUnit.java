package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Quantity;

/**
 * A braking unit that was tried, and the first limit it broke.
 *
 * @param unit its catalogue id
 * @param count how many of it in parallel
 * @param broken the limit
 * @param value what it comes to
 * @param limit what is allowed
 */
public record RejectedUnit(String unit, int count, BrakingLimit broken, Quantity value, Quantity limit) {}
