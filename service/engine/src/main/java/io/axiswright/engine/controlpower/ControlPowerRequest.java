package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.BufferUnit;
import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.OutputProtection;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * What the control supply has to feed, and what may be used to do so.
 *
 * @param codeBasis the electrical code to follow
 * @param spec what it must meet
 * @param site where the machine stands
 * @param mains what the control supplies are fed from
 * @param nodes the gateways with the axes on them
 * @param supplies control supplies to choose among
 * @param cables cables to choose among; those of use CONTROL_SUPPLY with 24 V conductors count
 * @param coupled cables that may be joined two by two where no single one reaches
 * @param protections protection of output circuits to choose among
 * @param buffers buffers to choose among
 * @param throughTransformer whether a transformer gives the control supplies their rated voltage
 */
public record ControlPowerRequest(
        CodeBasis codeBasis,
        ControlPower spec,
        Site site,
        Mains mains,
        @Count(max = 4096) List<ControlNode> nodes,
        List<ControlSupply> supplies,
        List<CableAssembly> cables,
        List<CoupledCables> coupled,
        List<OutputProtection> protections,
        List<BufferUnit> buffers,
        boolean throughTransformer) {

    /** Keeps the lists from being changed. */
    public ControlPowerRequest {
        nodes = List.copyOf(nodes);
        supplies = List.copyOf(supplies);
        cables = List.copyOf(cables);
        coupled = List.copyOf(coupled);
        protections = List.copyOf(protections);
        buffers = List.copyOf(buffers);
    }

    /** A request with neither protection of output circuits nor buffers to choose among. */
    public ControlPowerRequest(
            ControlPower spec,
            Site site,
            Mains mains,
            List<ControlNode> nodes,
            List<ControlSupply> supplies,
            List<CableAssembly> cables) {
        this(spec, site, mains, nodes, supplies, cables, List.of(), List.of());
    }

    /** A request under IEC 60204-1 with control supplies straight on the mains. */
    public ControlPowerRequest(
            ControlPower spec,
            Site site,
            Mains mains,
            List<ControlNode> nodes,
            List<ControlSupply> supplies,
            List<CableAssembly> cables,
            List<OutputProtection> protections,
            List<BufferUnit> buffers) {
        this(CodeBasis.IEC_60204_1, spec, site, mains, nodes, supplies, cables, List.of(), protections, buffers, false);
    }
}
