package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.Item;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A line before it is known what to order.
 *
 * @param item its item
 * @param kind how binding it is
 * @param demands the reasons that put it there
 * @param demanded their sum
 * @param cuts how it, and what {@code lot} it is of, is cut from reels; absent if it is not sold by whole reels, or another line has it
 * @param elsewhere what of these cuts stands on the other lines of the lot
 * @param before what the lines of the lot before it demand: pieces are rounded up once for all, so what is left of a piece serves the next
 */
record Draft(
        Item item,
        LineKind kind,
        List<LineDemand> demands,
        BigDecimal demanded,
        @Nullable CutList cuts,
        BigDecimal elsewhere,
        BigDecimal before) {

    /** A line that has no cut list, and none before it. */
    Draft(Item item, LineKind kind, List<LineDemand> demands) {
        this(item, kind, demands, sum(demands), null, BigDecimal.ZERO, BigDecimal.ZERO);
    }

    private static BigDecimal sum(List<LineDemand> demands) {
        return Rules.plain(demands.stream().map(LineDemand::quantity).reduce(BigDecimal.ZERO, BigDecimal::add));
    }

    /** The same line with its cut list, and what of that stands on the other lines of its lot. */
    Draft cut(CutList list, BigDecimal onOthers) {
        return new Draft(item, kind, demands, demanded, list, onOthers, before);
    }

    /** The drafts, each knowing what those of its lot before it demand. */
    static List<Draft> inLots(List<Draft> drafts) {
        Map<Lot, BigDecimal> sums = new HashMap<>();
        return drafts.stream()
                .map(draft -> {
                    BigDecimal sum = sums.merge(draft.lot(), draft.demanded(), BigDecimal::add);
                    BigDecimal before = sum.subtract(draft.demanded());
                    return before.signum() == 0 ? draft : draft.behind(before);
                })
                .toList();
    }

    private Draft behind(BigDecimal demandedBefore) {
        return new Draft(item, kind, demands, demanded, cuts, elsewhere, demandedBefore);
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

    /** What is needed beside the lines before it: the demands, whole pieces rounded up, and whole reels. */
    BigDecimal quantity() {
        if (cuts != null) {
            return Rules.plain(Reels.bought(cuts).subtract(elsewhere));
        }
        return SaleUnit.of(item) == SaleUnit.PIECE ? wholePieces(before, demanded) : demanded;
    }

    /** The whole pieces a demand takes beyond those that what is demanded before it takes. */
    static BigDecimal wholePieces(BigDecimal before, BigDecimal demanded) {
        return wholePieces(before.add(demanded)).subtract(wholePieces(before));
    }

    private static BigDecimal wholePieces(BigDecimal demanded) {
        return demanded.setScale(DECIDING_PLACES, RoundingMode.HALF_UP).setScale(0, RoundingMode.CEILING);
    }
}
