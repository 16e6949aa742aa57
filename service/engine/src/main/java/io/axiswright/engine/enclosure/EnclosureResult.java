package io.axiswright.engine.enclosure;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * The heat balances.
 *
 * @param enclosures in the order of the design
 * @param findings remarks
 * @param derivations how areas and temperatures came about
 */
public record EnclosureResult(
        List<EnclosureBalance> enclosures, List<Finding> findings, List<Derivation> derivations) {}
