package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Protection of one 24 V DC output circuit of a control supply.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit, that is of one channel; on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param kind how it works
 * @param rating current it carries for as long as it may
 * @param clearingPoints points of its characteristic for direct current, by rising current; what lies below the first is not
 *     counted as cleared
 */
public record OutputProtection(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        ProtectionKind kind,
        @Bounds(above = 0) Current rating,
        @Count(min = 1, max = 20) List<ClearingPoint> clearingPoints)
        implements Item {

    /** Keeps the points from being changed. */
    public OutputProtection {
        clearingPoints = List.copyOf(clearingPoints);
    }

    /** The least current it is sure to clear within that time; absent where no point says so. */
    public @Nullable Current operatingCurrent(Time within) {
        return ClearingPoint.operatingCurrent(clearingPoints, within);
    }

    /** The time within which it is sure to clear that current; absent where no point says so. */
    public @Nullable Time clearingTime(Current fault) {
        return ClearingPoint.clearingTime(clearingPoints, fault);
    }
}
