package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.ControlSupply;
import io.axiswright.engine.design.ControlPower;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.Site;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the control supply has to feed, and what may be used to do so.
 *
 * @param spec what it must meet
 * @param site where the machine stands
 * @param mains what the control supplies are fed from
 * @param nodes the gateways with the axes on them
 * @param longestStop longest controlled stop, from demand to rest, that must have control power to its end; none if absent
 * @param supplies control supplies to choose among
 * @param cables cables to choose among; those of use CONTROL_SUPPLY with 24 V conductors count
 */
public record ControlPowerRequest(
        ControlPower spec,
        Site site,
        Mains mains,
        @Count(max = 4096) List<ControlNode> nodes,
        @Bounds(min = 0) @Nullable Time longestStop,
        List<ControlSupply> supplies,
        List<CableAssembly> cables) {

    /** Keeps the lists from being changed. */
    public ControlPowerRequest {
        nodes = List.copyOf(nodes);
        supplies = List.copyOf(supplies);
        cables = List.copyOf(cables);
    }

    /** A request without controlled stops. */
    public ControlPowerRequest(
            ControlPower spec,
            Site site,
            Mains mains,
            List<ControlNode> nodes,
            List<ControlSupply> supplies,
            List<CableAssembly> cables) {
        this(spec, site, mains, nodes, null, supplies, cables);
    }
}
