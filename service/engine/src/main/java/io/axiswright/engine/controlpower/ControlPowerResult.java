package io.axiswright.engine.controlpower;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The control supply as worked out.
 *
 * @param supplies the control supplies placed
 * @param chains the current of each chain, or of each part of one that has several feed points, and how far it is from collapse
 * @param links the cable of every feed link
 * @param voltages the voltage at every gateway and drive unit that could be worked out
 * @param circuits the output circuit of every feed point with its protection; empty if the catalogue has no protection for them
 * @param holdUps how long every terminal has enough voltage after mains is lost
 * @param worst the terminal with the least margin; absent if no voltage could be worked out
 * @param findings remarks
 * @param derivations how the important numbers came about
 */
public record ControlPowerResult(
        List<PlacedControlSupply> supplies,
        List<ChainFeed> chains,
        List<FeedLink> links,
        List<ControlVoltage> voltages,
        List<OutputCircuit> circuits,
        List<HoldUp> holdUps,
        @Nullable ControlVoltage worst,
        List<Finding> findings,
        List<Derivation> derivations) {

    /** Keeps the lists from being changed. */
    public ControlPowerResult {
        supplies = List.copyOf(supplies);
        chains = List.copyOf(chains);
        links = List.copyOf(links);
        voltages = List.copyOf(voltages);
        circuits = List.copyOf(circuits);
        holdUps = List.copyOf(holdUps);
        findings = List.copyOf(findings);
        derivations = List.copyOf(derivations);
    }
}
