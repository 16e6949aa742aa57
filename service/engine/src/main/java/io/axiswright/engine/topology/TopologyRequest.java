package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * What the layout of the control network follows from.
 *
 * @param network host, places and how cable lengths follow from positions
 * @param axes the axes to be connected
 * @param gatewayTypes gateway types that can be bought
 * @param cableAssemblies cables that can be bought; those for host links, trunks and spurs are used
 * @param currency ISO 4217 code of the currency all prices are in
 * @param effort how hard to look
 */
public record TopologyRequest(
        Network network,
        @Count(min = 1, max = 1024) List<NetworkAxis> axes,
        List<GatewayType> gatewayTypes,
        List<CableAssembly> cableAssemblies,
        String currency,
        LayoutEffort effort) {

    /** Keeps the lists from being changed. */
    public TopologyRequest {
        axes = List.copyOf(axes);
        gatewayTypes = List.copyOf(gatewayTypes);
        cableAssemblies = List.copyOf(cableAssemblies);
    }
}
