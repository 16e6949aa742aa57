package io.axiswright.engine.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Scanner;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StockCuttingTest {

    /**
     * Numbers of bins proven optimal by R. F. F. da Silva and R. C. S. Schouery, INFORMS Journal on Computing 2025, doi
     * 10.1287/ijoc.2023.0399, results of the problems u120_00 to u120_09 of E. Falkenauer, Journal of Heuristics 2 (1996) 5-30.
     * The file itself states the best known of 1996, for u120_08 one too many.
     */
    private static final List<Integer> PUBLISHED = List.of(48, 49, 46, 49, 50, 48, 48, 49, 50, 46);

    private static final PatternProgram NONE = new PatternProgram(0);

    private record Problem(String name, int[] pieces, int stock) {}

    private static List<Problem> falkenauer() {
        try (var text = new Scanner(
                Objects.requireNonNull(StockCuttingTest.class.getResourceAsStream("/cutting/binpack1-part.txt")),
                StandardCharsets.UTF_8)) {
            return IntStream.range(0, text.nextInt())
                    .mapToObj(_ -> problem(text))
                    .toList();
        }
    }

    private static Problem problem(Scanner text) {
        String name = text.next();
        int stock = text.nextInt();
        int[] pieces = new int[text.nextInt()];
        text.nextInt(); // the best known in 1996
        Arrays.setAll(pieces, _ -> text.nextInt());
        return new Problem(name, pieces, stock);
    }

    @Test
    void reachesThePublishedOptimaAndProvesThem() {
        List<Problem> problems = falkenauer();
        for (int k = 0; k < PUBLISHED.size(); k++) {
            Problem problem = problems.get(k);
            StockCutting cutting = StockCutting.of(problem.pieces(), problem.stock());
            assertThat(cutting.stocks()).as(problem.name()).hasSize(PUBLISHED.get(k));
            assertThat(cutting.proven()).as(problem.name()).isTrue();
            assertSound(cutting, problem.pieces(), problem.stock());
        }
    }

    /** Where the native library cannot be loaded, the bound is the same and the plan at most one stock length longer. */
    @Test
    void withoutTheWholeNumberProgrammeTheGapIsStated() {
        List<Problem> problems = falkenauer();
        for (int k = 0; k < PUBLISHED.size(); k++) {
            Problem problem = problems.get(k);
            StockCutting cutting = StockCutting.of(problem.pieces(), problem.stock(), NONE);
            assertThat(cutting.bound()).as(problem.name()).isEqualTo(PUBLISHED.get(k));
            assertThat(cutting.stocks().size()).as(problem.name()).isBetween(PUBLISHED.get(k), PUBLISHED.get(k) + 1);
            assertSound(cutting, problem.pieces(), problem.stock());
        }
    }

    /** Independent route: the fewest stock lengths of every subset of the pieces, from those of its own subsets. */
    @Test
    void fewPiecesAreCutToTheOptimumOfEveryWayToCutThem() {
        var random = new Random(20260731);
        for (int round = 0; round < 300; round++) {
            int stock = 10 + random.nextInt(40);
            int[] pieces = IntStream.range(0, 1 + random.nextInt(9))
                    .map(_ -> 1 + random.nextInt(stock))
                    .toArray();
            StockCutting cutting = StockCutting.of(pieces, stock);
            assertThat(cutting.stocks()).hasSize(fewest(pieces, stock, (1 << pieces.length) - 1, new HashMap<>()));
            assertThat(cutting.proven()).isTrue();
            assertSound(cutting, pieces, stock);
        }
    }

    private static int fewest(int[] pieces, int stock, int open, Map<Integer, Integer> known) {
        if (open == 0) {
            return 0;
        }
        Integer before = known.get(open);
        if (before != null) {
            return before;
        }
        int best = Integer.MAX_VALUE;
        for (int one = open; one > 0; one = (one - 1) & open) {
            int sum = 0;
            for (int k = 0; k < pieces.length; k++) {
                sum += (one >> k & 1) * pieces[k];
            }
            if (sum <= stock) {
                best = Math.min(best, 1 + fewest(pieces, stock, open & ~one, known));
            }
        }
        known.put(open, best);
        return best;
    }

    /** Every piece once, no stock length overfull or empty, never fewer than the bound. */
    private static void assertSound(StockCutting cutting, int[] pieces, int stock) {
        assertThat(cutting.stocks().stream().flatMap(List::stream).sorted())
                .containsExactlyElementsOf(
                        IntStream.range(0, pieces.length).boxed().toList());
        assertThat(cutting.stocks())
                .allMatch(cuts -> cuts.stream().mapToInt(k -> pieces[k]).sum() <= stock)
                .allMatch(cuts -> !cuts.isEmpty())
                .hasSizeGreaterThanOrEqualTo(cutting.bound());
    }

    /**
     * By hand: of 44, 6 and 5 twice each the longest two take 12 of 112 more than they leave, yet 44 + 6 + 5 is 55 twice, so two
     * lengths of 55 do; of 56 % of a length only one piece goes on each.
     */
    @Test
    void byHand() {
        assertThat(StockCutting.of(new int[] {44, 6, 5, 44, 6, 5}, 55).stocks())
                .containsExactlyInAnyOrder(List.of(0, 1, 2), List.of(3, 4, 5));
        assertThat(StockCutting.of(new int[] {56, 56, 56}, 100))
                .isEqualTo(new StockCutting(List.of(List.of(0), List.of(1), List.of(2)), 3));
    }

    @Test
    void theSamePiecesAreAlwaysCutAlike() {
        Problem problem = falkenauer().getFirst();
        assertThat(StockCutting.of(problem.pieces(), problem.stock()))
                .isEqualTo(StockCutting.of(problem.pieces(), problem.stock()));
    }

    @Test
    void aThousandPiecesEndSoonWithABound() {
        var random = new Random(7);
        int[] pieces = random.ints(1000, 30, 4000).toArray();
        StockCutting cutting = StockCutting.of(pieces, 10_000);
        assertSound(cutting, pieces, 10_000);
        assertThat(cutting.stocks().size()).isLessThanOrEqualTo(cutting.bound() + 2);
    }

    @Test
    void nothingNeedsNothingAndWhatFitsNowhereIsRefused() {
        assertThat(StockCutting.of(new int[0], 10)).isEqualTo(new StockCutting(List.of(), 0));
        assertThatThrownBy(() -> StockCutting.of(new int[] {11}, 10)).isInstanceOf(IllegalArgumentException.class);
    }
}
