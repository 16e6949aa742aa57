package io.axiswright.engine.topology;

import java.util.BitSet;
import java.util.function.Predicate;

/** A subset none of whose members can be left out, for a condition that every set with such a subset in it meets, too. */
final class MinimalSubset {

    private MinimalSubset() {}

    /** Leaves out halves, then quarters, at last single members, as long as the condition holds; it has to hold at the start. */
    static BitSet of(BitSet start, Predicate<BitSet> holds) {
        BitSet kept = (BitSet) start.clone();
        for (int size = Integer.highestOneBit(Math.max(1, start.cardinality())); size > 0; size /= 2) {
            int[] members = kept.stream().toArray();
            for (int from = 0; from < members.length; from += size) {
                BitSet trial = (BitSet) kept.clone();
                for (int k = from; k < Math.min(members.length, from + size); k++) {
                    trial.clear(members[k]);
                }
                if (holds.test(trial)) {
                    kept = trial;
                }
            }
        }
        return kept;
    }
}
