package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.quantity.Count;
import java.math.BigDecimal;
import java.util.List;

/**
 * What the layout of the control network follows from.
 *
 * @param network host, places and how cable lengths follow from positions
 * @param axes the axes to be connected, those yet to come after the others
 * @param gatewayTypes gateway types that can be bought
 * @param cableAssemblies cables that can be bought; those for host links, trunks and spurs are used
 * @param catalogueSource how the caller gave the catalogue these are from, for pointers
 * @param currency ISO 4217 code of the currency all prices are in
 * @param effort how hard to look
 */
public record TopologyRequest(
        Network network,
        @Count(min = 1, max = 2048) List<NetworkAxis> axes,
        List<GatewayType> gatewayTypes,
        List<CableAssembly> cableAssemblies,
        CatalogueSource catalogueSource,
        String currency,
        LayoutEffort effort) {

    /** Keeps the lists from being changed. */
    public TopologyRequest {
        axes = List.copyOf(axes);
        gatewayTypes = List.copyOf(gatewayTypes);
        cableAssemblies = List.copyOf(cableAssemblies);
    }

    /** The axes that are there; those yet to come follow them in the list of all. */
    List<NetworkAxis> present() {
        return axes.stream().filter(axis -> !axis.isToCome()).toList();
    }

    /** Price of connecting an axis in another place than before; 0 where there is nothing to keep. */
    BigDecimal movePrice() {
        KeptLayout keep = network.keep();
        return keep == null || keep.movePrice() == null
                ? BigDecimal.ZERO
                : keep.movePrice().amount();
    }

    /** Drive ports every gateway leaves free. */
    int sparePorts() {
        Integer spare = network.sparePorts();
        return spare == null ? 0 : spare;
    }

    /** JSON Pointer to the gateway types in the caller's request. */
    String gatewaysPointer() {
        return catalogueSource.list("gateways", gatewayTypes);
    }

    /** JSON Pointer to the gateway type at that index, in the caller's request. */
    String gatewayPointer(int index) {
        return catalogueSource.item("gateways", index);
    }

    /** JSON Pointer to the cable assemblies in the caller's request. */
    String cablesPointer() {
        return catalogueSource.list("cableAssemblies", cableAssemblies);
    }

    /** JSON Pointer to the cable assembly at that index, in the caller's request. */
    String cablePointer(int index) {
        return catalogueSource.item("cableAssemblies", index);
    }
}
