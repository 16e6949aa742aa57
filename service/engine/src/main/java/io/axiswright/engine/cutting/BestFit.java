package io.axiswright.engine.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Best fit decreasing: the longest piece left goes where it leaves the least, on a new stock length if it fits nowhere. */
final class BestFit {

    private BestFit() {}

    /** Patterns that cut just the pieces wanted. */
    static List<List<Integer>> patterns(Kinds kinds, int[] wanted) {
        List<Integer[]> patterns = new ArrayList<>();
        List<Integer> rooms = new ArrayList<>();
        for (int kind = 0; kind < wanted.length; kind++) {
            for (int copy = 0; copy < wanted[kind]; copy++) {
                int place = place(rooms, kinds.lengths[kind]);
                if (place == rooms.size()) {
                    var pattern = new Integer[wanted.length];
                    Arrays.fill(pattern, 0);
                    patterns.add(pattern);
                    rooms.add(kinds.stock);
                }
                patterns.get(place)[kind]++;
                rooms.set(place, rooms.get(place) - kinds.lengths[kind]);
            }
        }
        return patterns.stream().map(List::of).toList();
    }

    private static int place(List<Integer> rooms, int length) {
        int best = rooms.size();
        for (int k = 0; k < rooms.size(); k++) {
            if (rooms.get(k) >= length && (best == rooms.size() || rooms.get(k) < rooms.get(best))) {
                best = k;
            }
        }
        return best;
    }
}
