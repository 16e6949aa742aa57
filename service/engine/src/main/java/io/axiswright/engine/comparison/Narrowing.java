package io.axiswright.engine.comparison;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Which changes of a group matter: halves of it are tried, halves of those that do, and so on down to single changes, the first of
 * the document first, as long as there are studies for it. A half that does nothing is not divided.
 */
final class Narrowing {

    private final Function<List<Integer>, Optional<Trial>> trials;
    private final Predicate<Trial> matters;

    /**
     * A search within groups.
     *
     * @param trials what some changes do together; empty if no study is left to tell it
     * @param matters whether they have a part in anything
     */
    Narrowing(Function<List<Integer>, Optional<Trial>> trials, Predicate<Trial> matters) {
        this.trials = trials;
        this.matters = matters;
    }

    /** What single changes of a group that matters do, by their places. */
    Map<Integer, Trial> within(List<Integer> group) {
        Map<Integer, Trial> singles = new TreeMap<>();
        Deque<List<Integer>> open = new ArrayDeque<>();
        divide(group, open);
        while (!open.isEmpty()) {
            List<Integer> part = open.pop();
            Optional<Trial> trial = trials.apply(part);
            if (trial.isEmpty()) {
                break;
            }
            if (part.size() == 1) {
                singles.put(part.getFirst(), trial.get());
            } else if (matters.test(trial.get())) {
                divide(part, open);
            }
        }
        return singles;
    }

    private static void divide(List<Integer> part, Deque<List<Integer>> open) {
        int middle = part.size() / 2;
        open.push(part.subList(middle, part.size()));
        open.push(part.subList(0, middle));
    }
}
