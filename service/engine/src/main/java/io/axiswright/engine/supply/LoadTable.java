package io.axiswright.engine.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All that the first two lines can carry together, circuit after circuit, in whole multiples of the common measure of the
 * currents; the third line carries the rest. Best where circuits are of few ratings: there the bound is often out of reach, and
 * different ways lead to the same loads.
 */
final class LoadTable {

    /** 32 MB for the tables after every circuit. */
    private static final long MOST_BITS = 1L << 28;

    private final int lines;
    private final int side;
    private final List<long[][]> reached = new ArrayList<>();

    private LoadTable(int lines, int side) {
        this.lines = lines;
        this.side = side;
    }

    /**
     * The lines of each circuit in the best way there is: smallest heaviest line, then smallest spread; empty where the table
     * would be too large.
     *
     * @param atMost heaviest line of a known way
     */
    static Optional<int[]> best(int lines, List<PhaseBalancing.Ask> asks, long measure, long atMost) {
        long side = atMost / measure + 1;
        if (side > Integer.MAX_VALUE || side * side > MOST_BITS / (asks.size() + 1)) {
            return Optional.empty();
        }
        var table = new LoadTable(lines, (int) side);
        var units =
                asks.stream().mapToInt(a -> (int) (a.microamperes() / measure)).toArray();
        table.fill(asks, units);
        return Optional.of(table.masks(asks, units));
    }

    private void fill(List<PhaseBalancing.Ask> asks, int[] units) {
        var none = table();
        none[0][0] = 1;
        reached.add(none);
        for (int k = 0; k < units.length; k++) {
            var next = table();
            for (int mask : masks(asks.get(k).lines())) {
                shifted(reached.getLast(), on(mask, 0, units[k]), on(mask, 1, units[k]), next);
            }
            reached.add(next);
        }
    }

    private long[][] table() {
        return new long[side][(side + Long.SIZE - 1) / Long.SIZE];
    }

    private int[] masks(int wanted) {
        return new LineLoads(lines).masks(wanted);
    }

    private static int on(int mask, int line, int units) {
        return (mask >> line & 1) * units;
    }

    /** Adds a table to another, moved by so many units on both lines; what moves out of it is heavier than known ways. */
    private void shifted(long[][] from, int first, int second, long[][] to) {
        int words = second / Long.SIZE;
        int bits = second % Long.SIZE;
        for (int x = 0; x + first < side; x++) {
            long[] source = from[x];
            long[] target = to[x + first];
            for (int w = 0; w + words < source.length; w++) {
                target[w + words] |= source[w] << bits;
                if (bits > 0 && w + words + 1 < source.length) {
                    target[w + words + 1] |= source[w] >>> (Long.SIZE - bits);
                }
            }
        }
    }

    private boolean isReached(int circuits, int x, int y) {
        return x >= 0
                && y >= 0
                && x < side
                && y < side
                && (reached.get(circuits)[x][y / Long.SIZE] >>> (y % Long.SIZE) & 1) == 1;
    }

    private int[] masks(List<PhaseBalancing.Ask> asks, int[] units) {
        int[] at = bestEnd(asks, units);
        int[] masks = new int[units.length];
        for (int k = units.length - 1; k >= 0; k--) {
            for (int mask : masks(asks.get(k).lines())) {
                int x = at[0] - on(mask, 0, units[k]);
                int y = at[1] - on(mask, 1, units[k]);
                if (isReached(k, x, y)) {
                    masks[k] = mask;
                    at = new int[] {x, y};
                    break;
                }
            }
        }
        return masks;
    }

    private int[] bestEnd(List<PhaseBalancing.Ask> asks, int[] units) {
        long total = 0;
        for (int k = 0; k < units.length; k++) {
            total += (long) units[k] * asks.get(k).lines();
        }
        int[] best = {0, 0};
        long bestHeaviest = Long.MAX_VALUE;
        long bestSpread = Long.MAX_VALUE;
        for (int x = 0; x < side; x++) {
            for (int y = 0; y < side; y++) {
                if (isReached(units.length, x, y)) {
                    long rest = lines == 3 ? total - x - y : y;
                    long heaviest = Math.max(Math.max(x, y), rest);
                    long spread = heaviest - Math.min(Math.min(x, y), rest);
                    if (heaviest < bestHeaviest || (heaviest == bestHeaviest && spread < bestSpread)) {
                        bestHeaviest = heaviest;
                        bestSpread = spread;
                        best = new int[] {x, y};
                    }
                }
            }
        }
        return best;
    }
}
