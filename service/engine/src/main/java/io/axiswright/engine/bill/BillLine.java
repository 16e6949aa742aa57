package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Mass;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Time;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One item of the bill, of one kind.
 *
 * @param id kind and item ("required:spur-5m"); the same in every bill that has this line
 * @param item id of the item in the catalogue
 * @param kind how binding it is; CONDITIONAL marks what is bought because a condition holds
 * @param description what it is, as the catalogue says
 * @param demanded sum of the demands
 * @param quantity what is needed: {@code demanded}, whole pieces rounded up; what the required line of the item leaves of its last piece
 *     serves the conditional one, which may so need none; of cable sold by reels the length on whole reels, and
 *     of pieces longer than one, less what a conditional line beside it needs
 * @param orderQuantity what to order for it: {@code quantity}, and what packs and the minimum order bring beyond it. The
 *     required and conditional lines of one item are one order, whose surplus stands on the first of them
 * @param unit what the quantity counts
 * @param unitCode UN/CEFACT Recommendation 20 common code of that unit
 * @param unitPrice price of one unit where so much is ordered; absent if on request or not for us to charge
 * @param linePrice unit price times {@code orderQuantity}, each line rounded half up to the currency's minor unit; absent if on request
 * @param sale what the line is sold for; absent where the design states no margins, for lines without a price, and for what is
 *     not charged
 * @param mass mass of {@code orderQuantity}, without packaging, rounded to milligrams; absent if unknown
 * @param leadTime time from the order to the delivery; absent if unknown
 * @param demands the reasons that put it there, in the order of their numbers
 */
public record BillLine(
        String id,
        String item,
        LineKind kind,
        String description,
        BigDecimal demanded,
        BigDecimal quantity,
        BigDecimal orderQuantity,
        SaleUnit unit,
        String unitCode,
        @Nullable Money unitPrice,
        @Nullable Money linePrice,
        @Nullable SalePrice sale,
        @Bounds(min = 0) @Nullable Mass mass,
        @Bounds(min = 0) @Nullable Time leadTime,
        List<LineDemand> demands) {

    /** The id of the line for that item and kind. */
    static String id(LineKind kind, String item) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ":" + item;
    }
}
