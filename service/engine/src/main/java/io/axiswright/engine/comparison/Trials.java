package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.study.StudyRequest;
import io.axiswright.engine.study.StudyResult;
import io.axiswright.engine.study.SystemStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The counterfactual studies of a comparison: for each input change, the second design without it and the first with it. */
final class Trials {

    private final SystemStudy study;
    private final StudyResult before;
    private final StudyResult after;
    private final List<Trial> trials = new ArrayList<>();
    private final List<String> notExamined = new ArrayList<>();
    private final int changes;
    private final int budget;
    private int studies;

    /** What one change does: where taking it back leaves the first or the second result, where putting it in brings the second. */
    private record Trial(int change, Unlike takenBackToBefore, Unlike takenBackToAfter, Unlike putInToAfter) {

        @Nullable
        Role role(String place) {
            boolean undone = !takenBackToBefore.at(place);
            boolean brought = !putInToAfter.at(place);
            if (undone) {
                return brought ? Role.NECESSARY_AND_SUFFICIENT : Role.NECESSARY;
            }
            if (brought) {
                return Role.SUFFICIENT;
            }
            return takenBackToAfter.at(place) ? Role.CONTRIBUTING : null;
        }
    }

    Trials(
            ComparisonRequest request,
            SystemStudy study,
            StudyResult before,
            StudyResult after,
            List<Difference> differences) {
        this.study = study;
        this.before = before;
        this.after = after;
        this.changes = differences.size();
        this.budget = request.budget();
        for (int k = 0; k < differences.size(); k++) {
            examine(k, differences.get(k), request);
        }
    }

    /** What a change is called, by its place among them. */
    static String id(int place) {
        return "change-" + (place + 1);
    }

    /** Whether the budget has room for so many more studies. */
    boolean affordable(int more) {
        return studies + more <= budget;
    }

    /** Where the result of a design of the caller's changes differs from the second. */
    Unlike unlikeSecond(StudyRequest request) {
        return unlike(after, study(request));
    }

    private void examine(int place, Difference change, ComparisonRequest request) {
        if (changes > 1 && !affordable(2)) {
            notExamined.add(id(place));
            return;
        }
        try {
            // the only change taken back is the first design, put in it is the second: nothing to study
            StudyResult without = changes == 1 ? before : study(Patch.takeBack(request.after(), change));
            StudyResult only = changes == 1 ? after : study(Patch.putIn(request.before(), change));
            trials.add(new Trial(place, unlike(before, without), unlike(after, without), unlike(after, only)));
        } catch (InvalidDesign meaningless) {
            notExamined.add(id(place));
        }
    }

    private StudyResult study(StudyRequest request) {
        studies++;
        return study.system(request);
    }

    private static Unlike unlike(StudyResult one, StudyResult other) {
        List<Difference> all = new ArrayList<>(Differences.between(one, other, Set.of("derivations", "findings")));
        all.addAll(FindingDifferences.between(one.findings(), other.findings()));
        return new Unlike(all);
    }

    /** What the changes that matter for a consequence do, in the order of the changes. */
    List<Part> parts(String place) {
        List<Part> parts = new ArrayList<>();
        for (Trial trial : trials) {
            Role role = trial.role(place);
            if (role != null) {
                parts.add(new Part(trial.change(), role));
            }
        }
        return List.copyOf(parts);
    }

    List<String> notExamined() {
        return List.copyOf(notExamined);
    }

    int studies() {
        return studies;
    }
}
