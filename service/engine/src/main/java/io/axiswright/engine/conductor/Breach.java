package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Quantity;

/**
 * A limit that a size fails.
 *
 * @param limit which limit
 * @param value the value held against it
 * @param bound the bound it breaks
 * @param clause the rule
 */
record Breach(Limit limit, Quantity value, Quantity bound, String clause) {}
