package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One reason why a line is on the bill.
 *
 * @param number which demand it goes back to, counted from 0: those of the design, then those of the catalogue's demand rules; of a
 *     spare part, which rule of {@code design.spares}
 * @param asker who asks, as that demand says
 * @param quantity how much of the line it accounts for, before rounding to whole pieces
 * @param reason why: the demand's own reason, or that of the need it came through
 * @param pointer JSON Pointer, in the request, to what asks or what it follows from
 * @param via id of the line whose item needs this one; of a spare part, the line it is kept
 *     for; absent if it is asked for directly
 * @param rule id of the catalogue's demand rule that asks for it; absent if the design does, or the item of another line
 */
public record LineDemand(
        @Bounds(min = 0) int number,
        String asker,
        BigDecimal quantity,
        String reason,
        String pointer,
        @Nullable String via,
        @Nullable String rule) {

    /** A reason that is no rule of the catalogue. */
    LineDemand(int number, String asker, BigDecimal quantity, String reason, String pointer, @Nullable String via) {
        this(number, asker, quantity, reason, pointer, via, null);
    }
}
