package io.axiswright.engine.supply;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.quantity.Count;
import java.util.List;
import java.util.Set;

/**
 * What the AC supply is sized from.
 *
 * @param codeBasis the electrical code to follow
 * @param mains the supply at the machine's terminals
 * @param installation how circuits are run and protected
 * @param loads what is to be fed
 * @param devices protective devices to choose from
 * @param throughTransformer ids of the loads to be fed through a transformer, whatever voltage the mains have
 */
public record SupplyRequest(
        CodeBasis codeBasis,
        Mains mains,
        Installation installation,
        @Count(min = 1) List<SupplyLoad> loads,
        List<ProtectiveDevice> devices,
        Set<String> throughTransformer) {

    /** Keeps the set from being changed. */
    public SupplyRequest {
        throughTransformer = Set.copyOf(throughTransformer);
    }

    /** A request that decides on no transformer. */
    public SupplyRequest(
            CodeBasis codeBasis,
            Mains mains,
            Installation installation,
            List<SupplyLoad> loads,
            List<ProtectiveDevice> devices) {
        this(codeBasis, mains, installation, loads, devices, Set.of());
    }

    /** The same as seen from what feeds a panel behind a transformer. */
    SupplyRequest behind(Mains secondary) {
        return new SupplyRequest(codeBasis, secondary, installation, loads, devices, throughTransformer);
    }
}
