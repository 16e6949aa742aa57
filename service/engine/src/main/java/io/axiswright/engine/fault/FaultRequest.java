package io.axiswright.engine.fault;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.quantity.Temperature;
import java.util.List;

/**
 * The AC distribution whose faults are studied: a feeder from the supply terminals to the mains panel, branch circuits from
 * there.
 *
 * @param codeBasis the electrical code to follow
 * @param mains the supply at the machine's terminals
 * @param insulation insulation of all conductors, in the words of the code basis
 * @param conductorTemperature highest temperature of the conductors in operation
 * @param feeder the feeder; its one end is the mains panel
 * @param branches the branch circuits
 * @param transformers transformers at the mains panel
 */
public record FaultRequest(
        CodeBasis codeBasis,
        Mains mains,
        Insulation insulation,
        Temperature conductorTemperature,
        FaultCircuit feeder,
        List<FaultCircuit> branches,
        List<FaultTransformer> transformers) {

    /** Keeps the lists from being changed afterwards. */
    public FaultRequest {
        branches = List.copyOf(branches);
        transformers = List.copyOf(transformers);
    }

    /**
     * What a transformer feeds, as a distribution of its own.
     *
     * @param behind the feeder from its terminals
     * @param terminals the faults at them
     */
    FaultRequest behind(FaultTransformer transformer, FaultCircuit behind, FaultPoint terminals) {
        return new FaultRequest(
                codeBasis,
                TransformerFaults.secondary(codeBasis, mains, transformer, terminals),
                insulation,
                conductorTemperature,
                behind,
                transformer.branches(),
                List.of());
    }
}
