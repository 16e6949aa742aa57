package io.axiswright.engine.comparison;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Which changes bring a consequence together where none does alone: those that may have a part in it are put into the first design
 * at once. Those without which the second result is another one are needed, and are left in. The rest, without which the second
 * design has no meaning, are left out one after the other, for good if the others still bring it, until none can be left out any more.
 *
 * <p>Whether a quite different set does it too is not asked.
 */
final class JointTrials {

    private enum Outcome {
        BRINGS,
        DOES_NOT,
        NOT_EXAMINED
    }

    private final int changes;
    private final Function<SortedSet<Integer>, Optional<Unlike>> trials;
    /** Where the first design with a set of changes is unlike the second result. */
    private final Map<SortedSet<Integer>, Unlike> known = new HashMap<>();

    /**
     * Trials of several of the caller's changes.
     *
     * @param changes how many there are
     * @param single what is known of them one by one
     * @param trials where the first design with some of them, named by their places, is unlike the second result; empty if no
     *     study is left to tell it
     */
    JointTrials(int changes, List<Trial> single, Function<SortedSet<Integer>, Optional<Unlike>> trials) {
        this.changes = changes;
        this.trials = trials;
        SortedSet<Integer> all =
                new TreeSet<>(IntStream.range(0, changes).boxed().toList());
        for (Trial trial : single) {
            know(without(all, trial.change()), trial.takenBackToAfter());
            know(new TreeSet<>(List.of(trial.change())), trial.putInToAfter());
        }
    }

    private void know(SortedSet<Integer> set, @Nullable Unlike unlike) {
        known.put(set, unlike == null ? Unlike.EVERYWHERE : unlike);
    }

    /**
     * The changes that bring what stands at a place of the second result, where none of them does alone.
     *
     * @param needed places of those without which the second result is another one there
     * @param open places of others that may have a part in it
     */
    Joint together(String place, Collection<Integer> needed, Collection<Integer> open) {
        SortedSet<Integer> set = new TreeSet<>(needed);
        set.addAll(open);
        if (set.size() < 2) {
            return Joint.NONE;
        }
        return switch (outcome(set, place)) {
            case BRINGS -> reduced(set, new ArrayDeque<>(new TreeSet<>(open)), place);
            case DOES_NOT -> Joint.NONE;
            case NOT_EXAMINED -> new Joint(List.of(), false, false);
        };
    }

    private Joint reduced(SortedSet<Integer> found, Deque<Integer> open, String place) {
        SortedSet<Integer> set = found;
        boolean examined = true;
        int kept = 0;
        // in rounds, because what is needed beside many may not be beside few
        while (kept < open.size()) {
            int change = open.removeFirst();
            SortedSet<Integer> fewer = without(set, change);
            Outcome outcome = outcome(fewer, place);
            if (outcome == Outcome.BRINGS) {
                set = fewer;
                kept = 0;
                examined = true;
            } else {
                open.addLast(change);
                kept++;
                examined &= outcome == Outcome.DOES_NOT;
            }
        }
        return new Joint(List.copyOf(set), examined, examined);
    }

    private static SortedSet<Integer> without(SortedSet<Integer> set, int change) {
        SortedSet<Integer> fewer = new TreeSet<>(set);
        fewer.remove(change);
        return fewer;
    }

    private Outcome outcome(SortedSet<Integer> set, String place) {
        if (set.size() == changes) {
            return Outcome.BRINGS;
        }
        Unlike unlike = known.get(set);
        if (unlike == null) {
            Optional<Unlike> tried = trials.apply(set);
            if (tried.isEmpty()) {
                return Outcome.NOT_EXAMINED;
            }
            unlike = tried.get();
            known.put(set, unlike);
        }
        return unlike.at(place) ? Outcome.DOES_NOT : Outcome.BRINGS;
    }
}
