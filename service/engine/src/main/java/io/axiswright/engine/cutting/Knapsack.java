package io.axiswright.engine.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * The most valuable pieces of one stock length, exactly: dynamic programming over the length, the copies of a kind in bundles
 * of 1, 2, 4 … and the rest.
 *
 * @param copies pieces of each kind
 * @param value their value together
 */
record Knapsack(List<Integer> copies, long value) {

    /** Copies of one kind that are taken together or not at all, and from which lengths on they are taken. */
    private record Bundle(int kind, int copies, BitSet taken) {}

    /**
     * Fills one stock length.
     *
     * @param kinds the pieces
     * @param most how many of each kind may be taken
     * @param values value of a piece of each kind, not below 0
     */
    static Knapsack fill(Kinds kinds, int[] most, long[] values) {
        long[] best = new long[kinds.stock + 1];
        List<Bundle> bundles = new ArrayList<>();
        for (int kind = 0; kind < most.length; kind++) {
            int left = values[kind] <= 0 ? 0 : Math.min(most[kind], kinds.stock / kinds.lengths[kind]);
            for (int copies = 1; left > 0; copies *= 2) {
                int taken = Math.min(copies, left);
                bundles.add(new Bundle(kind, taken, offer(best, taken * kinds.lengths[kind], taken * values[kind])));
                left -= taken;
            }
        }
        return new Knapsack(trace(kinds, bundles, most.length), best[kinds.stock]);
    }

    private static BitSet offer(long[] best, int length, long value) {
        var taken = new BitSet(best.length);
        for (int room = best.length - 1; room >= length; room--) {
            long with = best[room - length] + value;
            if (with > best[room]) {
                best[room] = with;
                taken.set(room);
            }
        }
        return taken;
    }

    private static List<Integer> trace(Kinds kinds, List<Bundle> bundles, int size) {
        var copies = new Integer[size];
        Arrays.fill(copies, 0);
        int room = kinds.stock;
        for (Bundle bundle : bundles.reversed()) {
            if (bundle.taken().get(room)) {
                copies[bundle.kind()] += bundle.copies();
                room -= bundle.copies() * kinds.lengths[bundle.kind()];
            }
        }
        return List.of(copies);
    }
}
