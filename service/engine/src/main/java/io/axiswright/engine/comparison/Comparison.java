package io.axiswright.engine.comparison;

import io.axiswright.engine.study.StudyFamily;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.topology.SearchGate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Set;

/**
 * Compares two studies and finds the causes of every consequence by counterfactual study: each input change is taken back
 * alone from the second design, and put alone into the first, and what the result does then tells its role.
 */
public final class Comparison {

    private final SearchGate gate;

    /** A comparison whose searches for layouts pass a gate. */
    public Comparison(SearchGate gate) {
        this.gate = gate;
    }

    /** Makes the comparison; the same two requests always give the same answer. */
    public ComparisonResult compare(ComparisonRequest asked) {
        Recognition recognition =
                Recognition.between(asked.before().design(), asked.after().design());
        ComparisonRequest request = asked.renamed(recognition.renames());
        var study = new StudyFamily(gate);
        StudyResult first = study.system(request.before());
        StudyResult after = study.system(request.after());
        var counted = new CountedParts(after);
        StudyResult before = counted.first(first);
        List<Difference> changes = Differences.between(request.before(), request.after(), Set.of());
        List<Difference> consequences = ResultDifferences.between(before, after);
        List<ChangeSet> sets = ChangeSets.of(changes);
        var trials = new Trials(
                request,
                (trial, near) -> counted.named(study.system(trial, near)),
                before,
                after,
                changes,
                sets,
                consequences.stream().map(Difference::place).toList());
        var joint = new JointTrials(sets.size(), trials.single(), trials::together);
        List<String> notExamined = consequences.isEmpty() ? new ArrayList<>() : trials.notExamined();
        boolean all = trials.allTried();
        List<Consequence> explained = new ArrayList<>();
        for (Difference difference : consequences) {
            Explanation explanation = explain(difference, trials, joint);
            StudyResult root = difference.kind() == ChangeKind.REMOVED ? before : after;
            explained.add(told(root, difference, explanation, sets, changes.size(), all));
            if (!explanation.joint().examined()) {
                notExamined.add(difference.place());
            }
        }
        return new ComparisonResult(
                recognition.renames(),
                recognition.splits(),
                recognition.merges(),
                counted.renumbered(),
                named(changes),
                groups(sets, trials),
                ComparisonSummary.of(before, after, consequences),
                counts(explained),
                List.copyOf(explained),
                List.copyOf(notExamined),
                trials.studies());
    }

    private static Explanation explain(Difference difference, Trials trials, JointTrials joint) {
        String place = difference.place();
        List<Part> parts = trials.parts(place);
        List<Part> closer = parts.stream()
                .flatMap(part -> trials.closer(part, place).stream())
                .toList();
        if (parts.stream().anyMatch(Part::brings)) {
            return new Explanation(closer, true, Joint.NONE);
        }
        List<Integer> needed = parts.stream().map(Part::place).toList();
        return new Explanation(closer, false, joint.together(place, needed, trials.bound()));
    }

    private static Consequence told(
            StudyResult root,
            Difference difference,
            Explanation explanation,
            List<ChangeSet> sets,
            int changes,
            boolean allExamined) {
        return new Consequence(
                difference.path().getFirst().text(),
                difference.place(),
                difference.kind(),
                difference.before(),
                difference.after(),
                Deltas.ofQuantities(difference.before(), difference.after()),
                Deltas.ofMoney(difference.before(), difference.after()),
                Deltas.ofNumbers(difference.before(), difference.after()),
                explanation.parts().stream().map(Part::named).toList(),
                allExamined && !explanation.alone() && changes > 1,
                explanation.joint().changes().stream()
                        .map(place -> sets.get(place).id())
                        .toList(),
                explanation.joint().minimal(),
                Telling.of(root, difference, explanation, sets, changes, allExamined));
    }

    private static List<InputChange> named(List<Difference> changes) {
        List<InputChange> result = new ArrayList<>();
        for (Difference change : changes) {
            result.add(InputChange.of(ChangeSet.id(result.size()), change));
        }
        return List.copyOf(result);
    }

    private static List<ChangeGroup> groups(List<ChangeSet> sets, Trials trials) {
        List<ChangeGroup> groups = new ArrayList<>();
        for (int place = 0; place < sets.size(); place++) {
            ChangeSet set = sets.get(place);
            if (set.isGroup()) {
                groups.add(new ChangeGroup(
                        set.id(),
                        set.changes().stream().map(ChangeSet::id).toList(),
                        trials.eachTried(place),
                        set.words()));
            }
        }
        return List.copyOf(groups);
    }

    private static LinkedHashMap<String, Integer> counts(List<Consequence> consequences) {
        var counts = new LinkedHashMap<String, Integer>();
        consequences.forEach(c -> counts.merge(c.discipline(), 1, Integer::sum));
        return counts;
    }
}
