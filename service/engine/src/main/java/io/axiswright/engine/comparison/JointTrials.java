package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which changes bring a consequence together where none does alone: those that have a part in it are put in at once, then those
 * of them that are not needed are left out one by one.
 */
final class JointTrials {

    private final StudyRequest before;
    private final List<Difference> changes;
    private final Trials trials;
    /** Where the second result is not reached with a set of changes; empty if the set has no meaning or no study is left. */
    private final Map<SortedSet<Integer>, Optional<Unlike>> known = new HashMap<>();

    JointTrials(StudyRequest before, List<Difference> changes, Trials trials) {
        this.before = before;
        this.changes = changes;
        this.trials = trials;
    }

    /** Places of the changes that bring the consequence together, none of which can be left out; none if none were found. */
    List<Integer> together(String place, List<Part> parts) {
        SortedSet<Integer> set = new TreeSet<>();
        parts.forEach(part -> set.add(part.change()));
        if (set.size() < 2 || !bring(set, place)) {
            return List.of();
        }
        for (Part part : parts) {
            if (part.role() == Role.CONTRIBUTING && set.size() > 2) {
                SortedSet<Integer> fewer = new TreeSet<>(set);
                fewer.remove(part.change());
                if (bring(fewer, place)) {
                    set.remove(part.change());
                }
            }
        }
        return List.copyOf(set);
    }

    private boolean bring(SortedSet<Integer> set, String place) {
        if (set.size() == changes.size()) {
            return true;
        }
        return known.computeIfAbsent(new TreeSet<>(set), this::study)
                .map(unlike -> !unlike.at(place))
                .orElse(false);
    }

    private Optional<Unlike> study(SortedSet<Integer> set) {
        if (!trials.affordable(1)) {
            return Optional.empty();
        }
        StudyRequest patched = before;
        for (int change : set) {
            patched = Patch.putIn(patched, changes.get(change));
        }
        try {
            return Optional.of(trials.unlikeSecond(patched));
        } catch (InvalidDesign meaningless) {
            return Optional.empty();
        }
    }
}
