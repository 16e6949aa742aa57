package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * The counterfactual studies of a comparison: for each input change, the second design without it and the first with it. Code
 * basis, catalogue and design take turns, so that many changes of one leave studies for those of the others; a part of the
 * budget is kept for trials of several changes at once.
 */
final class Trials {

    /** One study in so many is kept for joint trials. */
    private static final int RESERVE = 6;

    private final BiFunction<StudyRequest, StudyRequest, StudyResult> study;
    private final ComparisonRequest request;
    private final List<Difference> differences;
    private final StudyResult before;
    private final StudyResult after;
    private final Map<Integer, Trial> trials = new TreeMap<>();
    private int studies;

    Trials(
            ComparisonRequest request,
            BiFunction<StudyRequest, StudyRequest, StudyResult> study,
            StudyResult before,
            StudyResult after,
            List<Difference> differences) {
        this.study = study;
        this.request = request;
        this.differences = differences;
        this.before = before;
        this.after = after;
        boolean single = differences.size() == 1;
        int reserve = request.budget() / RESERVE;
        for (int place : inTurns(differences)) {
            if (single || affordable(2 + reserve)) {
                examine(place, differences.get(place), single);
            }
        }
    }

    /** Places of the changes, one of each part of the request in turn. */
    static List<Integer> inTurns(List<Difference> differences) {
        Map<String, List<Integer>> byPart = new LinkedHashMap<>();
        for (int k = 0; k < differences.size(); k++) {
            byPart.computeIfAbsent(differences.get(k).path().getFirst().text(), _ -> new ArrayList<>())
                    .add(k);
        }
        List<Integer> order = new ArrayList<>();
        for (int turn = 0; order.size() < differences.size(); turn++) {
            for (List<Integer> part : byPart.values()) {
                if (turn < part.size()) {
                    order.add(part.get(turn));
                }
            }
        }
        return order;
    }

    /** What a change is called, by its place among them. */
    static String id(int place) {
        return "change-" + (place + 1);
    }

    private boolean affordable(int more) {
        return studies + more <= request.budget();
    }

    private void examine(int place, Difference change, boolean single) {
        // the only change taken back is the first design, put in it is the second: nothing to study
        StudyResult without = single ? before : studied(Patch.takeBack(request.after(), change), request.after());
        StudyResult only = single ? after : studied(Patch.putIn(request.before(), change), request.before());
        trials.put(
                place,
                new Trial(
                        place,
                        without == null ? null : unlike(before, without),
                        without == null ? null : unlike(after, without),
                        only == null ? null : unlike(after, only)));
    }

    /** Where the first design with some of the changes is unlike the second result; empty if no study is left to tell it. */
    Optional<Unlike> together(SortedSet<Integer> changes) {
        if (!affordable(1)) {
            return Optional.empty();
        }
        StudyRequest patched = request.before();
        for (int change : changes) {
            patched = Patch.putIn(patched, differences.get(change));
        }
        StudyResult result = studied(patched, request.before());
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

    /** The trials of single changes, in the order of the changes. */
    List<Trial> single() {
        return List.copyOf(trials.values());
    }

    /** What the changes that matter for a consequence do, in the order of the changes. */
    List<Part> parts(String place) {
        List<Part> parts = new ArrayList<>();
        for (Trial trial : trials.values()) {
            Role role = trial.role(place);
            if (role != null) {
                parts.add(new Part(trial.change(), role, trial.canBeTakenBack()));
            }
        }
        return List.copyOf(parts);
    }

    /** Places of the changes without which the second design has no meaning, so that taking them back tells nothing. */
    List<Integer> bound() {
        return trials.values().stream()
                .filter(trial -> !trial.canBeTakenBack())
                .map(Trial::change)
                .toList();
    }

    /** Whether the budget was enough for every single change. */
    boolean allTried() {
        return trials.size() == differences.size();
    }

    /** Ids of the changes that could not be both taken back and put in. */
    List<String> notExamined() {
        List<String> ids = new ArrayList<>();
        for (int k = 0; k < differences.size(); k++) {
            Trial trial = trials.get(k);
            if (trial == null || !trial.isWhole()) {
                ids.add(id(k));
            }
        }
        return ids;
    }

    int studies() {
        return studies;
    }
}
