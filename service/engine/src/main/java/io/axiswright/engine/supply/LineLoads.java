package io.axiswright.engine.supply;

import java.util.Arrays;

/** Currents on the lines of a supply, in whole µA, while circuits are put on and taken off. */
final class LineLoads {

    private final long[] load;

    LineLoads(int lines) {
        this.load = new long[lines];
    }

    void put(int mask, long microamperes) {
        for (int l = 0; l < load.length; l++) {
            if ((mask & 1 << l) != 0) {
                load[l] += microamperes;
            }
        }
    }

    void clear() {
        Arrays.fill(load, 0);
    }

    long of(int line) {
        return load[line];
    }

    long heaviest() {
        long most = load[0];
        for (long l : load) {
            most = Math.max(most, l);
        }
        return most;
    }

    long lightest() {
        long least = load[0];
        for (long l : load) {
            least = Math.min(least, l);
        }
        return least;
    }

    long spread() {
        return heaviest() - lightest();
    }

    /** What is lacking for every line to carry at least the level. */
    long lacking(long level) {
        long lacking = 0;
        for (long l : load) {
            lacking += Math.max(0, level - l);
        }
        return lacking;
    }

    /** The loads without regard to which line carries which. */
    long[] sorted() {
        var sorted = load.clone();
        Arrays.sort(sorted);
        return sorted;
    }

    /** The ways to connect a circuit that uses so many lines, those on the lightest lines first. */
    int[] masks(int wanted) {
        var masks = new int[load.length];
        int n = 0;
        for (int mask = 1; mask < 1 << load.length; mask++) {
            if (Integer.bitCount(mask) == wanted) {
                int at = n++;
                for (; at > 0 && heaviestOf(masks[at - 1]) > heaviestOf(mask); at--) {
                    masks[at] = masks[at - 1];
                }
                masks[at] = mask;
            }
        }
        return Arrays.copyOf(masks, n);
    }

    private long heaviestOf(int mask) {
        long most = Long.MIN_VALUE;
        for (int l = 0; l < load.length; l++) {
            if ((mask & 1 << l) != 0) {
                most = Math.max(most, load[l]);
            }
        }
        return most;
    }
}
