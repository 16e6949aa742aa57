package io.axiswright.engine.comparison;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Findings that are not as they were, by how much they matter. One that matters more or less than before has vanished from the one
 * and appeared in the other.
 *
 * @param violations what keeps the machine from being built as answered
 * @param cautions what somebody must look at
 * @param notes what is worth knowing
 */
public record FindingChanges(ChangeCounts violations, ChangeCounts cautions, ChangeCounts notes) {

    static FindingChanges of(List<Difference> differences) {
        return new FindingChanges(
                counts(differences, Severity.VIOLATION),
                counts(differences, Severity.CAUTION),
                counts(differences, Severity.NOTE));
    }

    private static ChangeCounts counts(List<Difference> differences, Severity severity) {
        List<Difference> some = new ArrayList<>();
        for (Difference difference : differences) {
            boolean was = difference.before() instanceof Finding finding && finding.severity() == severity;
            boolean is = difference.after() instanceof Finding finding && finding.severity() == severity;
            if (was || is) {
                ChangeKind kind = was && is ? ChangeKind.CHANGED : was ? ChangeKind.REMOVED : ChangeKind.ADDED;
                some.add(new Difference(difference.path(), kind, difference.before(), difference.after()));
            }
        }
        return ChangeCounts.of(some);
    }
}
