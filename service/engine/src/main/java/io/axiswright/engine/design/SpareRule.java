package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * How many spare parts to keep of each required item of a kind: the share of what the machine has of it, rounded up to whole
 * units, and at least so many. A unit is a piece, or a metre of bulk cable. What a spare part needs beside it is on the machine
 * already and not bought again.
 *
 * @param kind the kind of the items
 * @param share spare units for each unit on the machine; 0 if absent
 * @param atLeast least number of spare units of each item; 1 if absent
 */
public record SpareRule(
        ItemKind kind,
        @Bounds(min = 0, max = 1) @Nullable Double share,
        @Bounds(min = 1, max = 1000) @Nullable Integer atLeast) {

    /** The spare units of an item of which the machine has that many. */
    public BigDecimal spares(BigDecimal onMachine) {
        BigDecimal byShare = onMachine
                .multiply(BigDecimal.valueOf(share == null ? 0 : share))
                .setScale(0, RoundingMode.CEILING);
        return byShare.max(BigDecimal.valueOf(atLeast == null ? 1 : atLeast));
    }
}
