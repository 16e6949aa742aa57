package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import java.math.BigDecimal;

/** What a need means on the bill. */
final class Rules {

    private Rules() {}

    /** Whether a need counts for a demand: all do but the conditional ones whose condition its asker does not meet. */
    static boolean holds(Need need, Demand demand) {
        return need.kind() != NeedKind.CONDITIONAL || demand.conditions().contains(need.when());
    }

    /**
     * The kind of the line a need leads to. Nothing an optional item needs is bought before the item is; what a
     * conditional item requires is there for the same condition; else the need's own kind stands.
     */
    static LineKind kind(LineKind parent, NeedKind need) {
        if (parent == LineKind.OPTIONAL) {
            return LineKind.OPTIONAL;
        }
        return parent == LineKind.CONDITIONAL && need == NeedKind.REQUIRED ? LineKind.CONDITIONAL : LineKind.of(need);
    }

    /** How much of what it needs a quantity of an item takes; exact. */
    static BigDecimal times(BigDecimal quantity, Need need) {
        return plain(quantity.multiply(BigDecimal.valueOf(need.quantity())));
    }

    /** The same number without trailing zeros, so that equal quantities are equal objects. */
    static BigDecimal plain(BigDecimal quantity) {
        var stripped = quantity.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
