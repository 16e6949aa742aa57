package io.axiswright.engine.duty;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What each axis asks of its drive unit, and which drive unit it gets.
 *
 * @param axes the axes, in the order of the request
 * @param findings what is to be said about them
 * @param derivations how the deciding numbers came about
 */
public record DutyResult(List<AxisDuty> axes, List<Finding> findings, List<Derivation> derivations) {

    /** Keeps the lists from being changed. */
    public DutyResult {
        axes = List.copyOf(axes);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
    }
}
