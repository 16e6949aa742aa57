package io.axiswright.engine.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts one-phase circuits on the lines: smallest heaviest line first, then smallest spread. Starts from the largest-first
 * heuristic bettered by moves and exchanges. Many circuits of few ratings are settled by a table of all loads there can be, other
 * many are evened out to the bound itself, which proves them best. Else it searches depth first for anything better. Up to
 * twelve circuits the search always ends and the answer is proven best; beyond, it gives up after a fixed number of steps and
 * the answer carries its bound. Whole microamperes, so that equal sums are equal.
 */
final class PhaseBalancing {

    /** More than the 3 + 9 + … + 3^12 steps of twelve circuits. */
    private static final int STEPS = 1_000_000;

    /** Beyond twelve a search hardly ever ends; what more steps find is not worth their time (a study of 64 axes doubled). */
    private static final int STEPS_OF_MANY = 50_000;

    /** So many circuits the search alone proves. */
    private static final int SEARCHED = 12;

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
    private final long measure;
    private final long bound;
    private final LineLoads loads;
    private final int[] trial;
    private final int mostSteps;

    private int[] best = {};
    private long bestHeaviest;
    private long bestSpread;
    private int steps;

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
        this.measure = asks.stream().mapToLong(Ask::microamperes).reduce(0, PhaseBalancing::commonMeasure);
        this.bound = Math.max(largest, measure == 0 ? 0 : measure * Math.ceilDiv(total, lines * measure));
        this.loads = new LineLoads(lines);
        this.trial = new int[asks.size()];
        this.mostSteps = asks.size() > SEARCHED ? STEPS_OF_MANY : STEPS;
    }

    /** The best way found to put these circuits on so many lines (1, 2 or 3). */
    static Answer of(int lines, List<Ask> asks) {
        return new PhaseBalancing(lines, asks).answer();
    }

    private Answer answer() {
        largestFirst();
        better();
        keep();
        boolean proven = asks.size() > SEARCHED && lines > 1 && !isAtBound() && tabulated();
        if (!proven) {
            if (asks.size() > SEARCHED) {
                evenOut();
            }
            proven = searched();
        }
        return new Answer(
                Arrays.stream(best).boxed().toList(), bestHeaviest, bestSpread, proven ? bestHeaviest : bound, proven);
    }

    private void largestFirst() {
        for (int k : order) {
            trial[k] = loads.masks(asks.get(k).lines())[0];
            put(k, trial[k], 1);
        }
    }

    /** Moves one circuit, or exchanges the lines of two, as long as that helps and steps are left. */
    private void better() {
        boolean helped = true;
        while (helped) {
            helped = false;
            for (int a : order) {
                for (int mask : loads.masks(asks.get(a).lines())) {
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

    /** Brings one line after the other to what it carries in an answer at the bound, as far as exchanges can. */
    private void evenOut() {
        for (int first = 0; first < lines; first++) {
            for (int second = 0; second < lines && !isAtBound(); second++) {
                if (first != second && exchange(first, second, bound) && lines == 3) {
                    exchange(second, lines - first - second, total - bound - lightestAtMost(bound));
                }
                if (isBetter(bestHeaviest, bestSpread)) {
                    keep();
                }
            }
        }
    }

    /** Whether a table of all loads there can be gave the best answer: only where there are few of them. */
    private boolean tabulated() {
        var masks = LoadTable.best(lines, asks, measure, bestHeaviest);
        masks.ifPresent(found -> {
            for (int k = 0; k < found.length; k++) {
                change(k, found[k]);
            }
            keep();
        });
        return masks.isPresent();
    }

    private boolean searched() {
        loads.clear();
        steps = 0;
        search(0, total);
        return steps < mostSteps;
    }

    /** Moves circuits between two lines so that the first carries exactly so much; whether it could. */
    private boolean exchange(int from, int to, long wanted) {
        var movable = Arrays.stream(order)
                .filter(k -> (trial[k] >> from & 1) != (trial[k] >> to & 1))
                .toArray();
        var changes = Arrays.stream(movable)
                .mapToLong(k -> (trial[k] >> from & 1) == 1
                        ? -asks.get(k).microamperes()
                        : asks.get(k).microamperes())
                .toArray();
        var moved = ExactSum.of(changes, wanted - loads.of(from));
        moved.ifPresent(which ->
                which.stream().map(i -> movable[i]).forEach(k -> change(k, trial[k] ^ (1 << from | 1 << to))));
        return moved.isPresent();
    }

    private boolean helps(int a, int maskA, int b, int maskB) {
        if (steps++ >= mostSteps) {
            return false;
        }
        long heaviest = loads.heaviest();
        long spread = loads.spread();
        int oldA = trial[a];
        int oldB = trial[b];
        change(a, maskA);
        change(b, maskB);
        if (isBetter(heaviest, spread)) {
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

    private void put(int k, int mask, int sign) {
        loads.put(mask, sign * asks.get(k).microamperes());
    }

    private void search(int depth, long left) {
        if (depth == order.length) {
            if (isBetter(bestHeaviest, bestSpread)) {
                keep();
            }
            return;
        }
        int k = order[depth];
        long rest = left - asks.get(k).microamperes() * asks.get(k).lines();
        var seen = new ArrayList<long[]>(lines);
        for (int mask : loads.masks(asks.get(k).lines())) {
            if (done()) {
                return;
            }
            steps++;
            put(k, mask, 1);
            trial[k] = mask;
            if (isNew(seen) && mayBeBetter(rest)) {
                search(depth + 1, rest);
            }
            put(k, mask, -1);
        }
    }

    /** Whether the search may stop altogether: nothing better is possible, or the steps are used up. */
    private boolean done() {
        return steps >= mostSteps || isAtBound();
    }

    private boolean isAtBound() {
        return bestHeaviest == bound && bestSpread == leastSpread(bound);
    }

    /** Lines are interchangeable: loads that differ only in the names of the lines lead to the same answers. */
    private boolean isNew(List<long[]> seen) {
        var sorted = loads.sorted();
        for (var other : seen) {
            if (Arrays.equals(other, sorted)) {
                return false;
            }
        }
        seen.add(sorted);
        return true;
    }

    private boolean mayBeBetter(long left) {
        long heaviest = loads.heaviest();
        if (heaviest != bestHeaviest) {
            return heaviest < bestHeaviest;
        }
        // as heavy at best: every line must still come up to where the spread is smaller
        return leastSpread(heaviest) < bestSpread && loads.lacking(bestHeaviest - bestSpread + 1) <= left;
    }

    private boolean isBetter(long heaviest, long spread) {
        return loads.heaviest() < heaviest || (loads.heaviest() == heaviest && loads.spread() < spread);
    }

    private void keep() {
        best = trial.clone();
        bestHeaviest = loads.heaviest();
        bestSpread = loads.spread();
    }

    private long leastSpread(long heaviest) {
        return lines == 1 ? 0 : heaviest - lightestAtMost(heaviest);
    }

    /**
     * With so much on the heaviest line, the others share the rest; the lightest of them has at most its mean, in whole
     * multiples of the common measure of all currents.
     */
    private long lightestAtMost(long heaviest) {
        return measure == 0 ? 0 : measure * Math.floorDiv(total - heaviest, (lines - 1L) * measure);
    }

    private static long commonMeasure(long a, long b) {
        return b == 0 ? a : commonMeasure(b, a % b);
    }
}
