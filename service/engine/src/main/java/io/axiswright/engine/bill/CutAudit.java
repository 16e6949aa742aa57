package io.axiswright.engine.bill;

import io.axiswright.engine.quantity.Length;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Proves a cut list from its lines alone: it plans nothing. */
final class CutAudit {

    /** Metres: what sums of lengths differ by is rounding. */
    private static final double ROUNDING = 1e-6;

    /** A piece as its demand has it. */
    private record Wanted(int number, String asker, String reason, double length) {}

    private CutAudit() {}

    /** Whether every piece demanded is cut just once, no reel is overfull and what is bought is what the list takes. */
    static boolean balances(List<BillLine> lines, Length reel, CutList cuts) {
        var pieces =
                Stream.concat(cuts.reels().stream().flatMap(r -> r.pieces().stream()), cuts.longerThanReel().stream());
        var cut = sorted(pieces.map(
                p -> new Wanted(p.number(), p.asker(), p.reason(), p.length().si())));
        var wanted = sorted(lines.stream()
                .flatMap(line -> line.demands().stream())
                .map(d -> new Wanted(
                        d.number(), d.asker(), d.reason(), d.quantity().doubleValue())));
        double onReel = Reels.metres(reel).doubleValue();
        double listed = lines.stream()
                .mapToDouble(line -> line.quantity().doubleValue())
                .sum();
        double bought = cuts.reels().size() * onReel + sum(cuts.longerThanReel(), 0);
        return cut.equals(wanted)
                && cuts.reels().stream()
                        .allMatch(r -> sum(r.pieces(), cuts.cutAllowance().si()) <= onReel + ROUNDING)
                && Math.abs(bought - listed) <= ROUNDING * Math.max(1, bought)
                && cuts.fewestReels() <= cuts.reels().size();
    }

    private static List<Wanted> sorted(Stream<Wanted> pieces) {
        return pieces.sorted(Comparator.comparingInt(Wanted::number)
                        .thenComparing(Wanted::reason)
                        .thenComparing(Wanted::length))
                .toList();
    }

    private static double sum(List<CutPiece> pieces, double allowance) {
        return pieces.stream().mapToDouble(p -> p.length().si() + allowance).sum();
    }
}
