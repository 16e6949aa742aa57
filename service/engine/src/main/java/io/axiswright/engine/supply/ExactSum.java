package io.axiswright.engine.supply;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds numbers that add up to an exact sum: all sums of one half of them are searched for what each sum of the other half
 * lacks. Tries the smallest numbers first and more of them while that fails; gives up at 36, of which there are 7e10
 * subsets, far more than there are µA on a line.
 */
final class ExactSum {

    private static final int[] HALVES = {6, 10, 14, 18};

    private ExactSum() {}

    /** The places of numbers that add up to the sum; empty if none were found. */
    static Optional<BitSet> of(long[] numbers, long sum) {
        var smallestFirst = IntStream.range(0, numbers.length)
                .boxed()
                .sorted(Comparator.comparing(k -> Math.abs(numbers[k])))
                .mapToInt(k -> k)
                .toArray();
        for (int half : HALVES) {
            var found = among(Arrays.copyOf(smallestFirst, Math.min(2 * half, smallestFirst.length)), numbers, sum);
            if (found.isPresent() || 2 * half >= numbers.length) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static Optional<BitSet> among(int[] places, long[] numbers, long sum) {
        // every other one, so that both halves have small and large ones
        var some = places(places, 0);
        var others = places(places, 1);
        long[] sums = sums(some, numbers);
        var known = new SumSet(sums);
        long[] otherSums = sums(others, numbers);
        for (int mask = 0; mask < otherSums.length; mask++) {
            long lacking = sum - otherSums[mask];
            if (known.contains(lacking)) {
                var found = new BitSet();
                add(found, others, mask);
                add(found, some, indexOf(sums, lacking));
                return Optional.of(found);
            }
        }
        return Optional.empty();
    }

    private static int[] places(int[] places, int parity) {
        return IntStream.range(0, places.length)
                .filter(k -> k % 2 == parity)
                .map(k -> places[k])
                .toArray();
    }

    /** The sums of all subsets, by bit mask. */
    private static long[] sums(int[] places, long[] numbers) {
        long[] sums = new long[1 << places.length];
        for (int mask = 1; mask < sums.length; mask++) {
            int lowest = Integer.numberOfTrailingZeros(mask);
            sums[mask] = sums[mask & mask - 1] + numbers[places[lowest]];
        }
        return sums;
    }

    private static int indexOf(long[] sums, long sum) {
        int k = 0;
        while (sums[k] != sum) {
            k++;
        }
        return k;
    }

    private static void add(BitSet found, int[] places, int mask) {
        for (int k = 0; k < places.length; k++) {
            if ((mask >> k & 1) == 1) {
                found.set(places[k]);
            }
        }
    }
}
