package io.axiswright.engine.conductor;

import io.axiswright.engine.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * A condition of a circuit that lies beyond the code's tables.
 *
 * @param member the member of the circuit that states it
 * @param value the condition
 * @param end where the table ends
 * @param limit which limit can therefore not be met
 * @param clause the table
 */
record Gap(String member, Quantity value, @Nullable Quantity end, Limit limit, String clause) implements Outlook {}
