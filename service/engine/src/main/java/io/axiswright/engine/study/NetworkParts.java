package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Catalogue;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.NetworkAxis;
import io.axiswright.engine.topology.TopologyRequest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the layout follows from: nothing of the drive units, so that it is the same whichever is chosen. */
final class NetworkParts {

    private NetworkParts() {}

    static TopologyRequest request(StudyRequest request, LayoutEffort effort) {
        Design design = request.design();
        List<NetworkAxis> axes = new ArrayList<>();
        for (Axis axis : design.axes()) {
            axes.add(new NetworkAxis(
                    axis.id(),
                    axis.position(),
                    axis.stopZone(),
                    axis.drive().holdingBrake(),
                    axis.commandRate(),
                    axes.size()));
        }
        Network network = Needed.network(design);
        axes.addAll(NetworkAxis.toCome(network));
        return new TopologyRequest(
                network,
                axes,
                request.catalogue().gateways(),
                request.catalogue().cableAssemblies(),
                coupled(request.catalogue()),
                request.catalogueSource(),
                request.catalogue().currency(),
                effort);
    }

    /** A pair is laid only where no single cable of its use reaches, however the network is limited. */
    private static List<CoupledCables> coupled(Catalogue catalogue) {
        Map<CableUse, Double> longest = new EnumMap<>(CableUse.class);
        catalogue
                .cableAssemblies()
                .forEach(cable -> longest.merge(cable.use(), cable.length().si(), Math::max));
        return catalogue.coupledCables().stream()
                .filter(pair -> pair.length().si() > longest.getOrDefault(pair.use(), 0.0))
                .toList();
    }
}
