package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How an item is sold. A unit is a piece, or a metre of bulk cable. Items are chosen by the price of one unit alone; only the
 * bill looks here.
 *
 * @param item id of the item
 * @param pack pieces in a pack, of which only whole ones are sold; sold singly if absent. Not for bulk cable, which is cut to
 *     length
 * @param minimumOrder least quantity of one order; none if absent
 * @param priceBreaks prices of larger orders, by rising quantity; the item's own price whatever is ordered if absent
 * @param mass mass of one unit; unknown if absent
 * @param leadTime time from the order to the delivery; unknown if absent
 */
public record SaleTerms(
        String item,
        @Bounds(min = 1, max = 1000000) @Nullable Integer pack,
        @Bounds(min = 1, max = 1000000) @Nullable Integer minimumOrder,
        @Count(max = 64) @Nullable List<PriceBreak> priceBreaks,
        @Bounds(min = 0) @Nullable Mass mass,
        @Bounds(min = 0) @Nullable Time leadTime) {

    /** Keeps the list from being changed. */
    public SaleTerms {
        priceBreaks = priceBreaks == null ? null : List.copyOf(priceBreaks);
    }

    /** Its price breaks, be they absent or none. */
    public List<PriceBreak> breaks() {
        return priceBreaks == null ? List.of() : priceBreaks;
    }

    /** What has to be ordered to have that much: no less than the minimum order, in whole packs. */
    public BigDecimal orderQuantity(BigDecimal needed) {
        BigDecimal least = minimumOrder == null ? needed : needed.max(BigDecimal.valueOf(minimumOrder));
        if (pack == null) {
            return least;
        }
        BigDecimal size = BigDecimal.valueOf(pack);
        return least.divide(size, 0, RoundingMode.CEILING).multiply(size);
    }

    /** The price of one unit where that much is ordered: that of the highest break reached, else the item's own. */
    public Money unitPrice(Money itemPrice, BigDecimal ordered) {
        return breaks().reversed().stream()
                .filter(step -> BigDecimal.valueOf(step.from()).compareTo(ordered) <= 0)
                .map(PriceBreak::price)
                .findFirst()
                .orElse(itemPrice);
    }
}
