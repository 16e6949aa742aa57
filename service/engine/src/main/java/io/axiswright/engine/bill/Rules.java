package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Need;
import io.axiswright.engine.catalogue.NeedKind;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;

/** What a need means on the bill. */
final class Rules {

    private static final Set<NeedKind> CHARGED = EnumSet.of(NeedKind.REQUIRED, NeedKind.CONDITIONAL, NeedKind.OPTIONAL);

    private Rules() {}

    /** Whether a need counts for a demand: all do but the conditional ones whose condition its asker does not meet. */
    static boolean holds(Need need, Demand demand) {
        return need.kind() != NeedKind.CONDITIONAL || demand.conditions().contains(need.when());
    }

    /**
     * The kind of the line a need leads to. Nothing an optional item needs is bought before the item is; what a
     * conditional item requires is there for the same condition; else the need's own kind stands.
     */
    static NeedKind kind(NeedKind parent, NeedKind need) {
        if (parent == NeedKind.OPTIONAL) {
            return NeedKind.OPTIONAL;
        }
        return parent == NeedKind.CONDITIONAL && need == NeedKind.REQUIRED ? NeedKind.CONDITIONAL : need;
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

    /** Whether lines of that kind cost anything. */
    static boolean charged(NeedKind kind) {
        return CHARGED.contains(kind);
    }
}
