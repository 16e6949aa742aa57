package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CatalogueSource;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.quantity.Count;
import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the layout of the control network follows from.
 *
 * @param network host, places and how cable lengths follow from positions
 * @param axes the axes to be connected, those yet to come after the others
 * @param gatewayTypes gateway types that can be bought
 * @param cableAssemblies cables that can be bought; those for host links, trunks and spurs are used
 * @param coupled cables that may be joined two by two, the cheapest first; of use are those longer than every single cable of their use
 * @param catalogueSource how the caller gave the catalogue these are from, for pointers
 * @param currency ISO 4217 code of the currency all prices are in
 * @param effort how hard to look
 */
public record TopologyRequest(
        Network network,
        @Count(min = 1, max = 2048) List<NetworkAxis> axes,
        List<GatewayType> gatewayTypes,
        List<CableAssembly> cableAssemblies,
        List<CoupledCables> coupled,
        CatalogueSource catalogueSource,
        String currency,
        LayoutEffort effort) {

    /** A request of which no cables may be joined. */
    TopologyRequest(
            Network network,
            List<NetworkAxis> axes,
            List<GatewayType> gatewayTypes,
            List<CableAssembly> cableAssemblies,
            CatalogueSource catalogueSource,
            String currency,
            LayoutEffort effort) {
        this(network, axes, gatewayTypes, cableAssemblies, List.of(), catalogueSource, currency, effort);
    }

    /** Keeps the lists from being changed. */
    public TopologyRequest {
        axes = List.copyOf(axes);
        gatewayTypes = List.copyOf(gatewayTypes);
        cableAssemblies = List.copyOf(cableAssemblies);
        coupled = List.copyOf(coupled);
    }

    /** The same without the axes of those indices. */
    TopologyRequest without(BitSet left) {
        return new TopologyRequest(
                network,
                IntStream.range(0, axes.size())
                        .filter(axis -> !left.get(axis))
                        .mapToObj(axes::get)
                        .toList(),
                gatewayTypes,
                cableAssemblies,
                coupled,
                catalogueSource,
                currency,
                effort);
    }

    /** The axes that are there; those yet to come follow them in the list of all. */
    List<NetworkAxis> present() {
        return axes.stream().filter(axis -> !axis.isToCome()).toList();
    }

    /** What a layout may be made of. */
    Stream<Item> items() {
        return Stream.of(
                        gatewayTypes,
                        cableAssemblies,
                        coupled.stream().map(CoupledCables::coupler).toList())
                .flatMap(List::stream);
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
