package io.axiswright.engine.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * Cuts pieces from as few equal stock lengths as it can (one-dimensional cutting stock, bin packing), and proves how few would do
 * at least. Long pieces are laid first where they leave the least. Where that takes more than what the pieces fill, the
 * relaxation over all patterns gives the bound and the patterns, which are rounded to whole numbers step by step; what gap is
 * left the whole-number programme over the patterns closes, where its native library can be loaded.
 *
 * @param stocks for each stock length the indexes of the pieces cut from it, longest first
 * @param bound proven: no fewer will do
 */
public record StockCutting(List<List<Integer>> stocks, int bound) {

    /** Steps of the relaxation and its rounding: about a second. */
    private static final long STEPS = 2_000_000_000;

    /** Limit of the whole-number programme, in the solver's deterministic seconds. */
    private static final double SEARCH_LIMIT = 2;

    /** Whether no way to cut the pieces takes fewer stock lengths. */
    public boolean proven() {
        return stocks.size() == bound;
    }

    /**
     * Plans the cuts.
     *
     * @param pieces lengths of the pieces, in whole steps, each from 1 to the stock length
     * @param stock the stock length, in the same steps
     * @throws IllegalArgumentException if a piece is not from 1 to the stock length
     */
    public static StockCutting of(int[] pieces, int stock) {
        return of(pieces, stock, new PatternProgram(SEARCH_LIMIT));
    }

    /** The same with a whole-number programme of other effort, or none. */
    static StockCutting of(int[] pieces, int stock, PatternProgram program) {
        if (Arrays.stream(pieces).anyMatch(piece -> piece < 1 || piece > stock)) {
            throw new IllegalArgumentException("a piece that is not from 1 to " + stock);
        }
        if (pieces.length == 0) {
            return new StockCutting(List.of(), 0);
        }
        var kinds = new Kinds(pieces, stock);
        Plan plan = plan(kinds, program);
        return new StockCutting(laid(pieces, kinds, plan.patterns()), plan.bound());
    }

    private static Plan plan(Kinds kinds, PatternProgram program) {
        List<List<Integer>> best = BestFit.patterns(kinds, kinds.counts);
        int bound = kinds.filled();
        if (best.size() == bound) {
            return new Plan(best, bound);
        }
        var relaxation = new PatternRelaxation(kinds, new Budget(STEPS));
        best.forEach(relaxation::learn);
        bound = Math.max(bound, relaxation.solve(kinds.counts, best.size()).bound());
        if (best.size() > bound) {
            List<List<Integer>> rounded = new PatternRounding(kinds, relaxation).patterns();
            best = rounded.size() < best.size() ? rounded : best;
        }
        var plan = new Plan(best, bound);
        return best.size() == bound ? plan : program.improve(kinds, plan, relaxation.patterns());
    }

    /** Which piece is cut from which stock length; a pattern may offer more of a kind than is left. */
    private static List<List<Integer>> laid(int[] pieces, Kinds kinds, List<List<Integer>> patterns) {
        var left = new TreeMap<Integer, Deque<Integer>>(Comparator.reverseOrder());
        IntStream.range(0, pieces.length)
                .forEach(k ->
                        left.computeIfAbsent(pieces[k], _ -> new ArrayDeque<>()).add(k));
        List<Deque<Integer>> byKind = List.copyOf(left.values());
        List<List<Integer>> stocks = new ArrayList<>();
        for (List<Integer> pattern : patterns) {
            List<Integer> cut = new ArrayList<>();
            for (int kind = 0; kind < kinds.lengths.length; kind++) {
                for (int copy = 0; copy < pattern.get(kind) && !byKind.get(kind).isEmpty(); copy++) {
                    cut.add(byKind.get(kind).removeFirst());
                }
            }
            stocks.add(List.copyOf(cut));
        }
        return List.copyOf(stocks);
    }
}
