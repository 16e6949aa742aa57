package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Cable gland (cord grip): where a cable enters an enclosure, it holds the cable and seals.
 *
 * @param id unique in the catalogue
 * @param description what it is
 * @param price price of one unit (one metre for bulk cable); on request if absent
 * @param needs what must, may or need not be bought beside it
 * @param clampsAbove it holds cables thicker than this
 * @param clampsUpTo thickest cable it holds
 * @param bore width of the widest cable end that passes it while it is taken apart, large for a split one; no more than the
 *     thickest cable if absent
 */
public record CableGland(
        String id,
        String description,
        @Nullable Money price,
        @AnyOrder List<Need> needs,
        @Bounds(min = 0) Length clampsAbove,
        @Bounds(above = 0) Length clampsUpTo,
        @Bounds(above = 0) @Nullable Length bore)
        implements Item {

    /** Whether it holds and seals a cable of that outer diameter. */
    public boolean holds(Length outerDiameter) {
        return outerDiameter.si() > clampsAbove.si() && outerDiameter.si() <= clampsUpTo.si();
    }

    /** Width of the widest end that passes it, be it stated or not. */
    public Length passes() {
        return bore == null ? clampsUpTo : bore;
    }
}
