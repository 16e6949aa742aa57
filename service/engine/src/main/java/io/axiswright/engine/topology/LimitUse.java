package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Quantity;

/**
 * How far a limit is used up.
 *
 * @param limit which limit
 * @param subject what it belongs to: a gateway, a host port, a place
 * @param used how much of it the layout uses
 * @param available how much there is
 */
public record LimitUse(LimitKind limit, String subject, Quantity used, Quantity available) {}
