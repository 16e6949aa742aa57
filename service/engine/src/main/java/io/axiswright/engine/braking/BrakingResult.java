package io.axiswright.engine.braking;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What the braking study found.
 *
 * @param groups every DC bus, in the order of the first axis on each
 * @param totals the whole machine
 * @param findings remarks
 * @param derivations how the important numbers came about
 */
public record BrakingResult(
        List<GroupBraking> groups, BrakingTotals totals, List<Finding> findings, List<Derivation> derivations) {

    /** Keeps the lists from being changed. */
    public BrakingResult {
        groups = List.copyOf(groups);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
    }
}
