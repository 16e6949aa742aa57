package io.axiswright.engine.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * How many stock lengths would do if each way to cut one (a pattern) could be used a fraction of a time: the linear programme
 * over all patterns by column generation (P. C. Gilmore, R. E. Gomory, Operations Research 9 (1961) 849-859; from memory, not confirmed). The pattern that
 * enters is the most valuable at the prices of the present basis, found exactly by {@link Knapsack}.
 */
final class PatternRelaxation {

    private static final double TOLERANCE = 1e-9;

    private static final double LEAST_PIVOT = 1e-7;

    /** What is added to the pieces wanted, other for each kind, so that no two bases are the same corner and the search moves on. */
    private static final double SHIFT = 1e-6;

    private static final double GOLDEN_RATIO = 0.6180339887498949;

    /** Prices as whole numbers, so that the bound taken from them is exact. */
    private static final long PRICE_UNIT = 1L << 40;

    /** A pattern and how often it is used. */
    record Use(List<Integer> pattern, double times) {}

    private final Kinds kinds;
    private final Budget budget;
    private final Set<List<Integer>> patterns = new LinkedHashSet<>();

    PatternRelaxation(Kinds kinds, Budget budget) {
        this.kinds = kinds;
        this.budget = budget;
    }

    /** Every pattern known, in the order in which they were found. */
    List<List<Integer>> patterns() {
        return List.copyOf(patterns);
    }

    /** Makes a pattern known. */
    void learn(List<Integer> pattern) {
        patterns.add(pattern);
    }

    /**
     * The relaxation for so many pieces of each kind. It ends where it is solved, where the budget is spent or, if only the
     * bound is wanted, where that reaches {@code enough} or cannot rise any more.
     */
    Solution solve(int[] wanted, int enough) {
        return new Solution(wanted, enough);
    }

    /** A basis and what follows from it. */
    final class Solution {

        private final int[] wanted;
        /** The kinds of which pieces are wanted: the rows of the programme. */
        private final int[] rows;
        /** Pattern of each basic variable; none where it counts pieces cut beyond those wanted. */
        private final @Nullable List<Integer>[] basis;

        private final double[][] inverse;
        private final double[] level;
        private final int enough;
        private int bound;

        @SuppressWarnings("unchecked")
        private Solution(int[] wanted, int enough) {
            this.wanted = wanted.clone();
            this.enough = enough;
            this.rows =
                    IntStream.range(0, wanted.length).filter(k -> wanted[k] > 0).toArray();
            int size = rows.length;
            this.basis = new List[size];
            this.inverse = new double[size][size];
            this.level = new double[size];
            for (int row = 0; row < size; row++) {
                int kind = rows[row];
                int copies = Math.min(wanted[kind], kinds.stock / kinds.lengths[kind]);
                basis[row] = single(kind, copies);
                inverse[row][row] = 1.0 / copies;
                level[row] = (wanted[kind] + SHIFT * (1 + (row + 1) * GOLDEN_RATIO % 1)) / copies;
            }
            run();
        }

        private List<Integer> single(int kind, int copies) {
            var pattern = new Integer[wanted.length];
            Arrays.fill(pattern, 0);
            pattern[kind] = copies;
            return List.of(pattern);
        }

        /** Proven: no fewer stock lengths will do, in whole numbers. */
        int bound() {
            return bound;
        }

        /** The patterns in use. */
        List<Use> uses() {
            List<Use> uses = new ArrayList<>();
            for (int row = 0; row < rows.length; row++) {
                List<Integer> pattern = basis[row];
                if (pattern != null && level[row] > TOLERANCE) {
                    uses.add(new Use(pattern, level[row]));
                }
            }
            return uses;
        }

        private void run() {
            while (!budget.spent() && bound < enough) {
                budget.use(3L * rows.length * rows.length);
                double[] prices = prices();
                int surplus = surplusToEnter(prices);
                if (surplus >= 0) {
                    double[] column = new double[rows.length];
                    for (int row = 0; row < rows.length; row++) {
                        column[row] = -inverse[row][surplus];
                    }
                    enter(null, column);
                    continue;
                }
                List<Integer> known = knownToEnter(prices);
                List<Integer> entering = known != null ? known : priceOut(prices);
                if (entering == null) {
                    return;
                }
                enter(entering, column(entering));
            }
        }

        private double[] prices() {
            double[] prices = new double[rows.length];
            for (int row = 0; row < rows.length; row++) {
                if (basis[row] != null) {
                    for (int k = 0; k < rows.length; k++) {
                        prices[k] += inverse[row][k];
                    }
                }
            }
            return prices;
        }

        private static int surplusToEnter(double[] prices) {
            int least = -1;
            for (int row = 0; row < prices.length; row++) {
                if (prices[row] < -TOLERANCE && (least < 0 || prices[row] < prices[least])) {
                    least = row;
                }
            }
            return least;
        }

        private @Nullable List<Integer> knownToEnter(double[] prices) {
            List<Integer> best = null;
            double most = 1 + TOLERANCE;
            budget.use((long) patterns.size() * rows.length);
            for (List<Integer> pattern : patterns) {
                double value = 0;
                for (int row = 0; row < rows.length; row++) {
                    value += prices[row] * pattern.get(rows[row]);
                }
                if (value > most && fits(pattern, wanted)) {
                    most = value;
                    best = pattern;
                }
            }
            return best;
        }

        /**
         * The best pattern of all, if it pays. The prices divided by its value are feasible for the dual programme, so what they
         * make of the pieces wanted is a bound (A. A. Farley, Operations Research 38 (1990) 922-923; from memory, not confirmed), here in whole numbers.
         */
        private @Nullable List<Integer> priceOut(double[] prices) {
            long[] values = new long[wanted.length];
            long worth = 0;
            for (int row = 0; row < rows.length; row++) {
                values[rows[row]] = (long) Math.max(0, Math.floor(prices[row] * PRICE_UNIT));
                worth += values[rows[row]] * wanted[rows[row]];
            }
            budget.use((long) rows.length * kinds.stock);
            Knapsack best = Knapsack.fill(kinds, wanted, values);
            bound = Math.max(bound, (int) Math.ceilDiv(worth, Math.max(1, best.value())));
            boolean pays = best.value() > PRICE_UNIT * (1 + TOLERANCE);
            if (!pays || settled()) {
                return null;
            }
            patterns.add(best.copies());
            return best.copies();
        }

        /** Whether the bound cannot rise any more, where only the bound is asked for. */
        private boolean settled() {
            return enough < Integer.MAX_VALUE && Math.ceil(total() - 2 * SHIFT * rows.length) <= bound;
        }

        private double total() {
            return uses().stream().mapToDouble(Use::times).sum();
        }

        private double[] column(List<Integer> pattern) {
            double[] column = new double[rows.length];
            for (int k = 0; k < rows.length; k++) {
                int copies = pattern.get(rows[k]);
                for (int row = 0; copies > 0 && row < rows.length; row++) {
                    column[row] += inverse[row][k] * copies;
                }
            }
            return column;
        }

        /** Takes a column into the basis for the one that reaches zero first. */
        private void enter(@Nullable List<Integer> pattern, double[] column) {
            int leaving = -1;
            for (int row = 0; row < rows.length; row++) {
                if (column[row] > LEAST_PIVOT
                        && (leaving < 0 || level[row] * column[leaving] < level[leaving] * column[row])) {
                    leaving = row;
                }
            }
            if (leaving < 0) { // only rounding can lead here: the programme is bounded
                budget.end();
                return;
            }
            double pivot = column[leaving];
            level[leaving] /= pivot;
            for (int k = 0; k < rows.length; k++) {
                inverse[leaving][k] /= pivot;
            }
            for (int row = 0; row < rows.length; row++) {
                if (row != leaving && column[row] != 0) {
                    level[row] = Math.max(0, level[row] - column[row] * level[leaving]);
                    for (int k = 0; k < rows.length; k++) {
                        inverse[row][k] -= column[row] * inverse[leaving][k];
                    }
                }
            }
            basis[leaving] = pattern;
        }
    }

    /** Whether a pattern cuts no more than is wanted. */
    static boolean fits(List<Integer> pattern, int[] wanted) {
        for (int kind = 0; kind < wanted.length; kind++) {
            if (pattern.get(kind) > wanted[kind]) {
                return false;
            }
        }
        return true;
    }
}
