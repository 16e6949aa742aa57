package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Item;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A line before it is known what to order.
 *
 * @param item its item
 * @param kind how binding it is
 * @param demands the reasons that put it there
 * @param cuts how it, and what {@code lot} it is of, is cut from reels; absent if it is not sold by whole reels, or another line has it
 * @param elsewhere what of these cuts stands on the other lines of the lot
 */
record Draft(
        Item item,
        LineKind kind,
        List<LineDemand> demands,
        @Nullable CutList cuts,
        BigDecimal elsewhere) {

    /** A line that has no cut list. */
    Draft(Item item, LineKind kind, List<LineDemand> demands) {
        this(item, kind, demands, null, BigDecimal.ZERO);
    }

    /** Needs such as "a third per unit" come in as decimals; this many places decide whether a piece is whole. */
    private static final int DECIDING_PLACES = 9;

    /** The lines of one item that are ordered together. */
    record Lot(String item, LineKind section) {}

    Lot lot() {
        return new Lot(item.id(), kind.section());
    }

    String lineId() {
        return BillLine.id(kind, item.id());
    }

    BigDecimal demanded() {
        return Rules.plain(demands.stream().map(LineDemand::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** What is needed: the demands, whole pieces rounded up, and whole reels. */
    BigDecimal quantity() {
        if (cuts != null) {
            return Rules.plain(Reels.bought(cuts).subtract(elsewhere));
        }
        return SaleUnit.of(item) == SaleUnit.PIECE ? wholePieces(demanded()) : demanded();
    }

    static BigDecimal wholePieces(BigDecimal demanded) {
        return demanded.setScale(DECIDING_PLACES, RoundingMode.HALF_UP).setScale(0, RoundingMode.CEILING);
    }
}
