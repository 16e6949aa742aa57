package io.axiswright.engine.study;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.finding.Severity;
import java.util.List;
import java.util.Set;

/**
 * What the other parts of a study found that whoever buys by the bill alone must know: what forbids building the system, for a part
 * that could not be chosen is not on the bill, and what else the catalogue does not hold.
 */
final class BillWarnings {

    /** Cautions that something has to be bought which is not on the bill. */
    private static final Set<FindingCode> LACKING = Set.of(
            FindingCode.SUPPLY_TRANSFORMER_NEEDED,
            FindingCode.CONTROL_OUTPUT_UNPROTECTED,
            FindingCode.MOUNTING_PART_NONE);

    private BillWarnings() {}

    static List<Finding> of(List<Finding> findings) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.VIOLATION || LACKING.contains(f.code()))
                .distinct()
                .toList();
    }
}
