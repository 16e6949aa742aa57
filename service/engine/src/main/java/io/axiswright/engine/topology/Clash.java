package io.axiswright.engine.topology;

import java.util.List;

/**
 * Why there is no layout, and what would let there be one. Where gateways may stand and which types there are is taken as given and not
 * among the limits that clash, but one more place is tried as a way out.
 *
 * @param limits limits that no layout meets together, even if every other limit of the request is set aside; empty if that is not
 *     proven
 * @param proof how small this set is proven to be
 * @param relaxations changes of which each by itself, with everything else as it is, lets a layout exist, those with the cheapest
 *     layout first; each was planned to prove it. Empty if none was found
 */
public record Clash(List<ClashingLimit> limits, ClashProof proof, List<Relaxation> relaxations) {

    /** Keeps the lists from being changed. */
    public Clash {
        limits = List.copyOf(limits);
        relaxations = List.copyOf(relaxations);
    }
}
