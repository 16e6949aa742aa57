package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * The AC supply.
 *
 * @param circuits the branch circuits of the mains panel: three-phase ones first, then by zone and use; then those behind each
 *     transformer, in the same order
 * @param feeder what feeds them all
 * @param disconnect what disconnects the machine from its supply
 * @param residualProtection what a residual-current device ahead of the machine would have to be
 * @param balance how evenly the lines are loaded
 * @param unfed ids of the loads no circuit feeds; a finding says why for each
 * @param buses the DC buses that some loads feed for others
 * @param transformers what feeds loads by decision of the design, or those whose voltage the mains do not have; a finding says so
 *     of the latter
 * @param findings remarks
 * @param derivations how the currents came about
 */
public record SupplyResult(
        List<BranchCircuit> circuits,
        Feeder feeder,
        Disconnect disconnect,
        ResidualProtection residualProtection,
        Balance balance,
        List<String> unfed,
        List<BusFeed> buses,
        List<TransformerNeed> transformers,
        List<Finding> findings,
        List<Derivation> derivations) {}
