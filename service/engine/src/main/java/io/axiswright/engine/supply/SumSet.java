package io.axiswright.engine.supply;

/**
 * A set of sums that only says whether it has one. A hash table with open addresses, at most half full: asked for thousands
 * of sums, most of which it does not have, it is several times faster than a search in sorted sums.
 */
final class SumSet {

    /** 2^64 divided by the golden ratio, which scatters sums that lie close together (Knuth, multiplicative hashing). */
    private static final long SCATTER = 0x9E3779B97F4A7C15L;

    private final long[] slots;
    private final boolean[] taken;
    private final int shift;

    SumSet(long[] sums) {
        int bits = Long.SIZE - Long.numberOfLeadingZeros(Math.max(1, 2L * sums.length - 1));
        slots = new long[1 << bits];
        taken = new boolean[slots.length];
        shift = Long.SIZE - bits;
        for (long sum : sums) {
            int slot = slot(sum);
            slots[slot] = sum;
            taken[slot] = true;
        }
    }

    boolean contains(long sum) {
        return taken[slot(sum)];
    }

    /** Where a sum stands, or would. */
    private int slot(long sum) {
        int slot = (int) (sum * SCATTER >>> shift);
        while (taken[slot] && slots[slot] != sum) {
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }
}
