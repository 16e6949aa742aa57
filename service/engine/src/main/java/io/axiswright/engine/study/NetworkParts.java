package io.axiswright.engine.study;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Design;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.NetworkAxis;
import io.axiswright.engine.topology.TopologyRequest;
import java.util.ArrayList;
import java.util.List;

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
                request.catalogueSource(),
                request.catalogue().currency(),
                effort);
    }
}
