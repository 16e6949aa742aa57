package io.axiswright.engine.containment;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * Cables in their routes.
 *
 * @param routes in the order of the design
 * @param findings remarks
 * @param derivations how fills and bend radii came about
 */
public record ContainmentResult(List<RouteUse> routes, List<Finding> findings, List<Derivation> derivations) {}
