package io.axiswright.engine.comparison;

import io.axiswright.engine.study.StudyResult;
import java.util.List;

/**
 * What is different at a first look.
 *
 * @param buildableBefore whether the first has no violation
 * @param buildableAfter whether the second has none
 * @param findings remarks, violations first
 * @param bill what must be bought
 * @param network the layout of the control network
 * @param consequences all consequences by their kind, those of findings, bill and network among them
 */
public record ComparisonSummary(
        boolean buildableBefore,
        boolean buildableAfter,
        FindingChanges findings,
        BillChanges bill,
        NetworkChanges network,
        ChangeCounts consequences) {

    /** Of two results in the same numbers, and what is different between them. */
    static ComparisonSummary of(StudyResult before, StudyResult after, List<Difference> consequences) {
        return new ComparisonSummary(
                before.buildable(),
                after.buildable(),
                FindingChanges.of(consequences),
                BillChanges.of(
                        before.billOfMaterials().required(),
                        after.billOfMaterials().required()),
                NetworkChanges.of(before.topology(), after.topology()),
                ChangeCounts.of(consequences));
    }
}
