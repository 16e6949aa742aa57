package io.axiswright.engine.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts one-phase circuits on the lines: smallest heaviest line first, then smallest spread. Starts from the largest-first
 * heuristic bettered by moves and exchanges, then searches depth first for anything better. Up to twelve circuits the
 * search always ends and the answer is proven best; beyond, it gives up after a fixed number of steps and the answer
 * carries its bound. Whole microamperes, so that equal sums are equal.
 */
final class PhaseBalancing {

    /** More than the 3 + 9 + … + 3^12 steps of twelve circuits. */
    private static final int STEPS = 1_000_000;

    /**
     * What one circuit asks.
     *
     * @param microamperes its current
     * @param lines how many lines it uses: one (with neutral) or two
     */
    record Ask(long microamperes, int lines) {}

    /**
     * Where the circuits go.
     *
     * @param masks the lines of each circuit, bit 0 for L1
     * @param heaviest current on the heaviest line, in µA
     * @param spread heaviest less lightest, in µA
     * @param bound no answer has a lighter heaviest line, in µA
     * @param proven whether no answer is better
     */
    record Answer(List<Integer> masks, long heaviest, long spread, long bound, boolean proven) {}

    private final int lines;
    private final List<Ask> asks;
    private final int[] order;
    private final long total;
    private final long bound;
    private int steps;

    private final int[] trial;
    private final long[] load;
    private final int[] best;
    private long bestHeaviest;
    private long bestSpread;

    private PhaseBalancing(int lines, List<Ask> asks) {
        this.lines = lines;
        this.asks = asks;
        this.order = IntStream.range(0, asks.size())
                .boxed()
                .sorted(Comparator.comparing((Integer k) -> asks.get(k).microamperes())
                        .reversed()
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(k -> k)
                .toArray();
        this.total = asks.stream().mapToLong(a -> a.microamperes() * a.lines()).sum();
        long largest = asks.stream().mapToLong(Ask::microamperes).max().orElse(0);
        this.bound = Math.max(largest, Math.ceilDiv(total, lines));
        this.trial = new int[asks.size()];
        this.load = new long[lines];
        this.best = new int[asks.size()];
    }

    /** The best way found to put these circuits on so many lines (1, 2 or 3). */
    static Answer of(int lines, List<Ask> asks) {
        return new PhaseBalancing(lines, asks).answer();
    }

    private Answer answer() {
        largestFirst();
        better();
        System.arraycopy(trial, 0, best, 0, best.length);
        bestHeaviest = heaviest();
        bestSpread = bestHeaviest - lightest();
        Arrays.fill(load, 0);
        search(0, total);
        boolean proven = steps < STEPS;
        long atLeast = proven ? bestHeaviest : bound;
        return new Answer(Arrays.stream(best).boxed().toList(), bestHeaviest, bestSpread, atLeast, proven);
    }

    private void largestFirst() {
        for (int k : order) {
            trial[k] = masks(k).getFirst();
            put(k, trial[k], 1);
        }
    }

    /** Moves one circuit, or exchanges the lines of two, as long as that helps. */
    private void better() {
        boolean helped = true;
        while (helped) {
            helped = false;
            for (int a : order) {
                for (int mask : masks(a)) {
                    helped |= helps(a, mask, a, mask);
                }
                for (int b : order) {
                    if (a < b && asks.get(a).lines() == asks.get(b).lines() && trial[a] != trial[b]) {
                        helped |= helps(a, trial[b], b, trial[a]);
                    }
                }
            }
        }
    }

    private boolean helps(int a, int maskA, int b, int maskB) {
        long heaviest = heaviest();
        long spread = heaviest - lightest();
        int oldA = trial[a];
        int oldB = trial[b];
        change(a, maskA);
        change(b, maskB);
        long now = heaviest();
        if (now < heaviest || (now == heaviest && now - lightest() < spread)) {
            return true;
        }
        change(b, oldB);
        change(a, oldA);
        return false;
    }

    private void change(int k, int mask) {
        put(k, trial[k], -1);
        trial[k] = mask;
        put(k, mask, 1);
    }

    /** Whether the search may stop altogether: nothing better is possible, or the steps are used up. */
    private boolean done() {
        return steps >= STEPS || (bestHeaviest == bound && bestSpread == leastSpread(bound));
    }

    private void search(int depth, long left) {
        if (depth == order.length) {
            keepIfBetter();
            return;
        }
        int k = order[depth];
        var seen = new ArrayList<long[]>(lines);
        for (int mask : masks(k)) {
            if (done()) {
                return;
            }
            steps++;
            put(k, mask, 1);
            trial[k] = mask;
            long rest = left - asks.get(k).microamperes() * asks.get(k).lines();
            if (isNew(seen) && mayBeBetter(rest)) {
                search(depth + 1, rest);
            }
            put(k, mask, -1);
        }
    }

    /** Lines are interchangeable: loads that differ only in the names of the lines lead to the same answers. */
    private boolean isNew(List<long[]> seen) {
        var sorted = load.clone();
        Arrays.sort(sorted);
        if (seen.stream().anyMatch(other -> Arrays.equals(other, sorted))) {
            return false;
        }
        seen.add(sorted);
        return true;
    }

    private boolean mayBeBetter(long left) {
        long heaviest = heaviest();
        if (heaviest != bestHeaviest) {
            return heaviest < bestHeaviest;
        }
        // as heavy at best: every line must still come up to where the spread is smaller
        long level = bestHeaviest - bestSpread + 1;
        long lacking = Arrays.stream(load).map(l -> Math.max(0, level - l)).sum();
        return lacking <= left && leastSpread(heaviest) < bestSpread;
    }

    private void keepIfBetter() {
        long heaviest = heaviest();
        long spread = heaviest - lightest();
        if (heaviest < bestHeaviest || (heaviest == bestHeaviest && spread < bestSpread)) {
            bestHeaviest = heaviest;
            bestSpread = spread;
            System.arraycopy(trial, 0, best, 0, best.length);
        }
    }

    private long leastSpread(long heaviest) {
        return lines == 1 ? 0 : heaviest - Math.floorDiv(total - heaviest, lines - 1L);
    }

    /** The ways to connect a circuit, the lightest lines first. */
    private List<Integer> masks(int k) {
        int wanted = asks.get(k).lines();
        return IntStream.range(1, 1 << lines)
                .filter(mask -> Integer.bitCount(mask) == wanted)
                .boxed()
                .sorted(Comparator.comparingLong(this::heaviestOf).thenComparing(Comparator.naturalOrder()))
                .toList();
    }

    private long heaviestOf(int mask) {
        return IntStream.range(0, lines)
                .filter(l -> (mask & 1 << l) != 0)
                .mapToLong(l -> load[l])
                .max()
                .orElse(0);
    }

    private void put(int k, int mask, int sign) {
        for (int l = 0; l < lines; l++) {
            if ((mask & 1 << l) != 0) {
                load[l] += sign * asks.get(k).microamperes();
            }
        }
    }

    private long heaviest() {
        return Arrays.stream(load).max().orElse(0);
    }

    private long lightest() {
        return Arrays.stream(load).min().orElse(0);
    }
}
