package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.quantity.Length;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Routes between the things of a request and the cables that serve them. */
final class Routes {

    final Network network;
    private final List<NetworkAxis> axes;
    private final Map<String, String> fixed = new HashMap<>();
    final CableChoice hostCables;
    final CableChoice trunkCables;
    final CableChoice spurCables;

    Routes(TopologyRequest request) {
        this.network = request.network();
        this.axes = request.axes();
        if (network.fixed() != null) {
            network.fixed().forEach(one -> fixed.put(one.axis(), one.place()));
        }
        this.hostCables = new CableChoice(request.cableAssemblies(), CableUse.HOST);
        this.trunkCables = new CableChoice(request.cableAssemblies(), CableUse.TRUNK);
        this.spurCables = new CableChoice(request.cableAssemblies(), CableUse.SPUR);
    }

    /** Route of a link to a gateway; from the host if {@code from} is −1. */
    Length link(int from, int to) {
        return network.route().between(start(from), position(to));
    }

    /** The measured way of the same link, without factor and slack. */
    Position start(int from) {
        return from < 0 ? network.host().position() : position(from);
    }

    Position position(int place) {
        return network.places().get(place).position();
    }

    /** Whether an axis may hang on a gateway in a place: on all it reaches, unless its place is fixed. */
    boolean allowed(int axis, int place) {
        String only = fixed.get(axes.get(axis).id());
        return only == null || only.equals(network.places().get(place).id());
    }

    Length spur(int axis, int place) {
        return network.route().between(axes.get(axis).position(), position(place));
    }

    Optional<CableAssembly> linkCable(int from, int to) {
        return (from < 0 ? hostCables : trunkCables).forRoute(link(from, to));
    }

    Optional<CableAssembly> spurCable(int axis, int place) {
        return allowed(axis, place) ? spurCables.forRoute(spur(axis, place)) : Optional.empty();
    }
}
