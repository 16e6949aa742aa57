package io.axiswright.engine.conductor;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.standard.Source;
import java.util.List;

/**
 * The conductors of every circuit.
 *
 * @param circuits in the order of the request
 * @param sources where the table values used come from
 * @param findings remarks on the result
 * @param derivations how the important numbers came about
 */
public record ConductorResult(
        List<CircuitConductors> circuits, List<Source> sources, List<Finding> findings, List<Derivation> derivations) {}
