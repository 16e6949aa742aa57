package io.axiswright.engine.mounting;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * The mountings as checked.
 *
 * @param axes every axis, in the order of the request
 * @param findings remarks
 * @param derivations how the torques came about
 */
public record MountingResult(List<AxisMounting> axes, List<Finding> findings, List<Derivation> derivations) {

    /** Keeps the lists from being changed. */
    public MountingResult {
        axes = List.copyOf(axes);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
    }
}
