package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.NeedKind;
import io.axiswright.engine.quantity.Money;
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
 * @param quantity what to order: {@code demanded}, whole pieces rounded up; of cable sold by reels the length on whole reels, and
 *     of pieces longer than one
 * @param unit what the quantity counts
 * @param unitCode UN/CEFACT Recommendation 20 common code of that unit
 * @param unitPrice price of one unit; absent if on request or not for us to charge
 * @param linePrice unit price times quantity, rounded half up to the currency's minor unit; absent if on request
 * @param demands the reasons that put it there, in the order of the request's demands
 */
public record BillLine(
        String id,
        String item,
        NeedKind kind,
        String description,
        BigDecimal demanded,
        BigDecimal quantity,
        SaleUnit unit,
        String unitCode,
        @Nullable Money unitPrice,
        @Nullable Money linePrice,
        List<LineDemand> demands) {

    /** The id of the line for that item and kind. */
    static String id(NeedKind kind, String item) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + ":" + item;
    }
}
