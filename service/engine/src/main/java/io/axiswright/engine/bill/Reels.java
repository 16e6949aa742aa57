package io.axiswright.engine.bill;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.cutting.StockCutting;
import io.axiswright.engine.quantity.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Plans how cable that is sold by whole reels is cut from them. */
final class Reels {

    /** Centimetres: cable is measured off no finer. */
    private static final int STEP_PLACES = 2;

    /** Millimetres: what a length in other units differs by beyond is rounding. */
    private static final int LENGTH_PLACES = 3;

    private final BulkCable cable;
    private final BigDecimal reel;
    private final BigDecimal allowance;

    private Reels(BulkCable cable, Length reel) {
        this.cable = cable;
        this.reel = metres(reel);
        this.allowance = cable.cutAllowance() == null ? BigDecimal.ZERO : metres(cable.cutAllowance());
    }

    /** The drafts; of those that are ordered together and cut from reels the first has the cut list of all. */
    static List<Draft> cut(List<Draft> drafts) {
        Map<Draft.Lot, List<Draft>> lots = new HashMap<>();
        drafts.stream()
                .filter(draft -> draft.item() instanceof BulkCable cable && cable.reelLength() != null)
                .forEach(draft -> lots.computeIfAbsent(draft.lot(), _ -> new ArrayList<>())
                        .add(draft));
        return drafts.stream()
                .map(draft -> {
                    List<Draft> lot = lots.get(draft.lot());
                    return lot != null && lot.getFirst() == draft ? cutTogether(lot) : draft;
                })
                .toList();
    }

    private static Draft cutTogether(List<Draft> lot) {
        Draft first = lot.getFirst();
        var cable = (BulkCable) first.item();
        var pieces = lot.stream().flatMap(draft -> draft.demands().stream()).toList();
        var cuts = new Reels(cable, Objects.requireNonNull(cable.reelLength())).plan(first.lineId(), pieces);
        BigDecimal elsewhere = lot.stream().skip(1).map(Draft::demanded).reduce(BigDecimal.ZERO, BigDecimal::add);
        return first.cut(cuts, elsewhere);
    }

    /** Metres bought: whole reels, and the pieces no reel is long enough for. */
    static BigDecimal bought(CutList cuts) {
        BigDecimal beside = cuts.longerThanReel().stream()
                .map(piece -> metres(piece.length()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return Rules.plain(metres(cuts.reelLength())
                .multiply(BigDecimal.valueOf(cuts.reels().size()))
                .add(beside));
    }

    static BigDecimal metres(Length length) {
        return BigDecimal.valueOf(length.si()).setScale(LENGTH_PLACES, RoundingMode.HALF_UP);
    }

    private CutList plan(String line, List<LineDemand> demands) {
        int stock = reel.setScale(STEP_PLACES, RoundingMode.FLOOR)
                .movePointRight(STEP_PLACES)
                .intValueExact();
        var fitting = demands.stream().filter(d -> steps(d) <= stock).toList();
        var longer = demands.stream().filter(d -> steps(d) > stock).toList();
        var cutting =
                StockCutting.of(fitting.stream().mapToInt(d -> (int) steps(d)).toArray(), stock);
        var reels = new ArrayList<CutReel>();
        cutting.stocks()
                .forEach(cut -> reels.add(reel(cut.stream().map(fitting::get).toList())));
        BigDecimal waste = reel.multiply(BigDecimal.valueOf(reels.size())).subtract(sum(fitting));
        return new CutList(
                line,
                cable.id(),
                length(reel),
                length(allowance),
                List.copyOf(reels),
                cutting.bound(),
                cutting.proven(),
                length(waste),
                longer.stream().map(Reels::piece).toList());
    }

    /** Whole centimetres a piece takes of a reel. */
    private long steps(LineDemand demand) {
        return demand.quantity()
                .add(allowance)
                .setScale(STEP_PLACES, RoundingMode.CEILING)
                .movePointRight(STEP_PLACES)
                .longValueExact();
    }

    private CutReel reel(List<LineDemand> cut) {
        BigDecimal taken = sum(cut).add(allowance.multiply(BigDecimal.valueOf(cut.size())));
        return new CutReel(cut.stream().map(Reels::piece).toList(), length(reel.subtract(taken)));
    }

    private static BigDecimal sum(List<LineDemand> demands) {
        return demands.stream().map(LineDemand::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static CutPiece piece(LineDemand demand) {
        return new CutPiece(
                demand.number(), demand.asker(), demand.reason(), length(demand.quantity()), demand.pointer());
    }

    private static Length length(BigDecimal metres) {
        return new Length(metres.doubleValue());
    }
}
