package io.axiswright.engine.conductor;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * Circuits to find conductors for.
 *
 * @param codeBasis the code they follow
 * @param circuits the circuits
 */
public record ConductorRequest(
        CodeBasis codeBasis, @Count(min = 1, max = 10000) List<Circuit> circuits) {

    /** Keeps the list from being changed afterwards. */
    public ConductorRequest {
        circuits = List.copyOf(circuits);
    }
}
