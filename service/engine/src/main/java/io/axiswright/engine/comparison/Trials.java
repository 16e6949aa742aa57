package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The counterfactual studies of a comparison: for each input change, or group of them, the second design without it and the first
 * with it. Code basis, catalogue and design take turns, so that many changes of one leave studies for those of the others; a part of
 * the budget is kept for trials of several at once, and what is left over goes to the single changes of groups.
 */
final class Trials {

    /** One study in so many is kept for joint trials. */
    private static final int RESERVE = 6;

    private final BiFunction<StudyRequest, StudyRequest, StudyResult> study;
    private final ComparisonRequest request;
    private final List<Difference> differences;
    private final List<ChangeSet> sets;
    private final StudyResult before;
    private final StudyResult after;
    private final Map<Integer, Trial> trials = new TreeMap<>();
    /** Of groups what single changes do, as far as that was tried. */
    private final Map<Integer, Map<Integer, Trial>> within = new HashMap<>();

    private int studies;

    /**
     * Makes the trials.
     *
     * @param study of a design, near another one
     * @param places of what is to be explained, in the result; where there is nothing, nothing is tried
     */
    Trials(
            ComparisonRequest request,
            BiFunction<StudyRequest, StudyRequest, StudyResult> study,
            StudyResult before,
            StudyResult after,
            List<Difference> differences,
            List<ChangeSet> sets,
            List<String> places) {
        this.study = study;
        this.request = request;
        this.differences = differences;
        this.sets = sets;
        this.before = before;
        this.after = after;
        if (places.isEmpty()) {
            return;
        }
        for (int place : inTurns(differences, sets)) {
            ChangeSet set = sets.get(place);
            tried(place, set.changes()).ifPresent(trial -> trials.put(place, trial));
        }
        var narrowing = new Narrowing(
                changes -> tried(changes.getFirst(), changes),
                trial -> places.stream().anyMatch(place -> trial.role(place) != null));
        trials.keySet().stream()
                .filter(place -> sets.get(place).isGroup())
                .forEach(place ->
                        within.put(place, narrowing.within(sets.get(place).changes())));
    }

    /** Places of the sets, one of each part of the request in turn. */
    private static List<Integer> inTurns(List<Difference> differences, List<ChangeSet> sets) {
        Map<String, List<Integer>> byPart = new LinkedHashMap<>();
        for (int k = 0; k < sets.size(); k++) {
            Difference first = differences.get(sets.get(k).changes().getFirst());
            byPart.computeIfAbsent(first.path().getFirst().text(), _ -> new ArrayList<>())
                    .add(k);
        }
        List<Integer> order = new ArrayList<>();
        for (int turn = 0; order.size() < sets.size(); turn++) {
            for (List<Integer> part : byPart.values()) {
                if (turn < part.size()) {
                    order.add(part.get(turn));
                }
            }
        }
        return order;
    }

    private boolean affordable(int more) {
        return studies + more <= request.budget();
    }

    /** What some of the changes do; empty if no studies are left to tell it. */
    private Optional<Trial> tried(int place, List<Integer> changes) {
        if (changes.size() == differences.size()) {
            // all changes taken back are the first design, put in they are the second: nothing to study
            return Optional.of(trial(place, before, after));
        }
        if (!affordable(2 + request.budget() / RESERVE)) {
            return Optional.empty();
        }
        StudyRequest without = request.after();
        for (int change : changes) {
            without = Patch.takeBack(without, differences.get(change));
        }
        return Optional.of(trial(place, studied(without, request.after()), studied(with(changes), request.before())));
    }

    private Trial trial(int place, @Nullable StudyResult without, @Nullable StudyResult only) {
        return new Trial(
                place,
                without == null ? null : unlike(before, without),
                without == null ? null : unlike(after, without),
                only == null ? null : unlike(after, only));
    }

    /** The first design with some of the changes. */
    private StudyRequest with(Collection<Integer> changes) {
        StudyRequest patched = request.before();
        for (int change : changes) {
            patched = Patch.putIn(patched, differences.get(change));
        }
        return patched;
    }

    /** Where the first design with some of the sets is unlike the second result; empty if no study is left to tell it. */
    Optional<Unlike> together(SortedSet<Integer> places) {
        if (!affordable(1)) {
            return Optional.empty();
        }
        List<Integer> changes = places.stream()
                .flatMap(place -> sets.get(place).changes().stream())
                .toList();
        StudyResult result = studied(with(changes), request.before());
        return Optional.of(result == null ? Unlike.EVERYWHERE : unlike(after, result));
    }

    /** The result of a design; null if it has no meaning. */
    private @Nullable StudyResult studied(StudyRequest asked, StudyRequest near) {
        studies++;
        try {
            return study.apply(asked, near);
        } catch (InvalidDesign meaningless) {
            return null;
        }
    }

    private static Unlike unlike(StudyResult one, StudyResult other) {
        return Unlike.of(ResultDifferences.between(one, other));
    }

    /** The trials of the sets, in their order. */
    List<Trial> single() {
        return List.copyOf(trials.values());
    }

    /** What the sets that matter for a consequence do, in their order. */
    List<Part> parts(String place) {
        List<Part> parts = new ArrayList<>();
        for (Trial trial : trials.values()) {
            Role role = trial.role(place);
            if (role != null) {
                parts.add(new Part(sets.get(trial.change()), trial.change(), role, trial.canBeTakenBack()));
            }
        }
        return List.copyOf(parts);
    }

    /**
     * The same as closely as it is known: instead of a group those of its changes that bring the consequence, each alone, or the only
     * one that does what the group does.
     */
    List<Part> closer(Part part, String place) {
        List<Part> closer = new ArrayList<>();
        within.getOrDefault(part.place(), Map.of()).forEach((change, trial) -> {
            if (trial.role(place) == part.role()) {
                closer.add(new Part(
                        ChangeSet.single(change, differences.get(change)),
                        part.place(),
                        part.role(),
                        trial.canBeTakenBack()));
            }
        });
        boolean known = part.brings() ? !closer.isEmpty() : closer.size() == 1 && eachTried(part.place());
        return known ? closer : List.of(part);
    }

    /** Places of the sets without which the second design has no meaning, so that taking them back tells nothing. */
    List<Integer> bound() {
        return trials.values().stream()
                .filter(trial -> !trial.canBeTakenBack())
                .map(Trial::change)
                .toList();
    }

    /** Whether the budget was enough for every single change. */
    boolean allTried() {
        return trials.size() == sets.size() && trials.keySet().stream().allMatch(this::eachTried);
    }

    /** Whether every change of a set was tried by itself. */
    boolean eachTried(int place) {
        ChangeSet set = sets.get(place);
        return set.isGroup()
                ? within.getOrDefault(place, Map.of()).size() == set.changes().size()
                : trials.containsKey(place);
    }

    /** Ids of the changes and groups that could not be both taken back and put in. */
    List<String> notExamined() {
        List<String> ids = new ArrayList<>();
        for (int k = 0; k < sets.size(); k++) {
            Trial trial = trials.get(k);
            if (trial == null || !trial.isWhole()) {
                ids.add(sets.get(k).id());
            }
        }
        return ids;
    }

    int studies() {
        return studies;
    }
}
