package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * A piece of cable to be cut.
 *
 * @param number number of the demand of the request it goes back to, counted from 0
 * @param asker who asks for it, as that demand says
 * @param reason why
 * @param length its length, without the allowance for the cut
 * @param pointer JSON Pointer, in the request, to what asks or what it follows from
 */
public record CutPiece(
        @Bounds(min = 0) int number,
        String asker,
        String reason,
        @Bounds(above = 0) Length length,
        String pointer) {}
