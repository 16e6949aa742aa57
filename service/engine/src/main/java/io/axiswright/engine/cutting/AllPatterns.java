package io.axiswright.engine.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Every pattern no wanted piece fits beside, where they are few. */
final class AllPatterns {

    /** Patterns beyond which the whole-number programme is content with those that were found. */
    private static final int MOST = 5_000;

    private final Kinds kinds;
    private final Integer[] pattern;
    private final List<List<Integer>> patterns = new ArrayList<>();

    private AllPatterns(Kinds kinds) {
        this.kinds = kinds;
        this.pattern = new Integer[kinds.lengths.length];
        Arrays.fill(pattern, 0);
    }

    /** All of them; none if there are too many. */
    static List<List<Integer>> of(Kinds kinds) {
        var all = new AllPatterns(kinds);
        all.extend(0, kinds.stock);
        return all.tooMany() ? List.of() : List.copyOf(all.patterns);
    }

    private boolean tooMany() {
        return patterns.size() > MOST;
    }

    private void extend(int kind, int room) {
        if (kind == pattern.length) {
            if (full(room)) {
                patterns.add(List.of(pattern));
            }
            return;
        }
        int most = Math.min(kinds.counts[kind], room / kinds.lengths[kind]);
        for (int copies = most; copies >= 0 && !tooMany(); copies--) {
            pattern[kind] = copies;
            extend(kind + 1, room - copies * kinds.lengths[kind]);
        }
        pattern[kind] = 0;
    }

    private boolean full(int room) {
        for (int kind = 0; kind < pattern.length; kind++) {
            if (pattern[kind] < kinds.counts[kind] && kinds.lengths[kind] <= room) {
                return false;
            }
        }
        return true;
    }
}
