package io.axiswright.engine.stopping;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What the stopping study found.
 *
 * @param zones how every stop zone comes to rest, in the design's order
 * @param powerLosses what every axis does when its power is lost, whatever its stop zone, in the design's order
 * @param findings remarks
 * @param derivations how the important numbers came about
 */
public record StoppingResult(
        List<ZoneStopping> zones,
        List<AxisStopping> powerLosses,
        List<Finding> findings,
        List<Derivation> derivations) {

    /** Keeps the lists from being changed. */
    public StoppingResult {
        zones = List.copyOf(zones);
        powerLosses = List.copyOf(powerLosses);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
    }
}
