package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.DemandCondition;
import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One item asked for by a part of the design.
 *
 * @param item id of the item in the catalogue
 * @param quantity how many pieces, or metres of bulk cable; decimal, so that sums are exact
 * @param kind how binding it is; CONDITIONAL says that the asker's condition holds
 * @param asker who asks, in the caller's words ("axis lift-1", "gateway G2")
 * @param reason why, in words a buyer understands
 * @param pointer JSON Pointer, in the request, to what asks or what it follows from
 * @param conditions the conditions that hold for the asker; they decide the CONDITIONAL needs of all that follows
 * @param rule id of the catalogue's demand rule that asks; absent if the design does
 */
public record Demand(
        String item,
        @Bounds(above = 0, max = 1000000) BigDecimal quantity,
        NeedKind kind,
        String asker,
        String reason,
        String pointer,
        @Count(max = 16) List<DemandCondition> conditions,
        @Nullable String rule) {

    /** A demand of the design. */
    public Demand(
            String item,
            BigDecimal quantity,
            NeedKind kind,
            String asker,
            String reason,
            String pointer,
            List<DemandCondition> conditions) {
        this(item, quantity, kind, asker, reason, pointer, conditions, null);
    }
}
