package io.axiswright.engine.cutting;

import java.util.Arrays;
import java.util.Collections;
import java.util.stream.IntStream;

/** Pieces to cut, equal ones taken together as one kind; longest first. */
final class Kinds {

    /** Length of a piece of each kind, in steps, falling. */
    final int[] lengths;

    /** How many pieces of each kind are wanted. */
    final int[] counts;

    /** The stock length, in the same steps. */
    final int stock;

    /** A measure all pieces share is the step: nothing is lost by it, for what is cut is always a multiple of it. */
    Kinds(int[] pieces, int stock) {
        int step = Math.max(1, Arrays.stream(pieces).reduce(0, Kinds::commonMeasure));
        this.lengths = Arrays.stream(pieces)
                .map(piece -> piece / step)
                .boxed()
                .distinct()
                .sorted(Collections.reverseOrder())
                .mapToInt(Integer::intValue)
                .toArray();
        this.counts = Arrays.stream(lengths)
                .map(length -> (int) Arrays.stream(pieces)
                        .filter(piece -> piece / step == length)
                        .count())
                .toArray();
        this.stock = stock / step;
    }

    private static int commonMeasure(int a, int b) {
        return b == 0 ? a : commonMeasure(b, a % b);
    }

    /** Stock lengths that the pieces fill at least, were they cut without waste. */
    int filled() {
        long sum = IntStream.range(0, lengths.length)
                .mapToLong(k -> (long) lengths[k] * counts[k])
                .sum();
        return (int) Math.ceilDiv(sum, stock);
    }
}
