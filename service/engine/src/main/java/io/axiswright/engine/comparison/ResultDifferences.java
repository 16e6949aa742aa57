package io.axiswright.engine.comparison;

import io.axiswright.engine.study.StudyResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What is different between two results and asks for causes; trials are held against the same. */
final class ResultDifferences {

    /** Explanations and the long tails of candidates follow from the rest; listing them again would drown it. */
    private static final Set<String> LEFT_OUT = Set.of(
            "derivations", "findings", "candidates", "tried", "rejected", "cabling", "engineVersion", "codeBasis");

    private ResultDifferences() {}

    /** All differences, those of findings last. */
    static List<Difference> between(StudyResult before, StudyResult after) {
        List<Difference> all = new ArrayList<>(Differences.between(before, after, LEFT_OUT));
        all.addAll(FindingDifferences.between(before.findings(), after.findings()));
        return all;
    }
}
