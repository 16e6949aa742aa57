package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.CoupledCables;
import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.CableLengths;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Routes between the things of a request and the cables that serve them. */
final class Routes {

    final Network network;
    final CableLengths lengths;
    private final List<NetworkAxis> axes;
    private final Map<String, String> fixed = new HashMap<>();
    final CableChoice hostCables;
    final CableChoice trunkCables;
    final CableChoice spurCables;
    private final Map<String, CableChoice> reservedCables = new HashMap<>();

    Routes(TopologyRequest request) {
        this.network = request.network();
        this.axes = request.axes();
        this.lengths = new CableLengths(network, network.ways() == null ? Map.of() : positions());
        if (network.fixed() != null) {
            network.fixed().forEach(one -> fixed.put(one.axis(), one.place()));
        }
        this.hostCables = new CableChoice(request.cableAssemblies(), request.coupled(), CableUse.HOST);
        this.trunkCables = new CableChoice(request.cableAssemblies(), request.coupled(), CableUse.TRUNK);
        this.spurCables = new CableChoice(request.cableAssemblies(), request.coupled(), CableUse.SPUR);
        for (ReservedAxis reserved : network.reservedList()) {
            List<String> will = reserved.spurCables();
            if (will != null) {
                List<CableAssembly> allowed = request.cableAssemblies().stream()
                        .filter(cable -> will.contains(cable.id()))
                        .toList();
                List<CoupledCables> joined = request.coupled().stream()
                        .filter(pair -> allowed.containsAll(pair.pieces()))
                        .toList();
                reservedCables.put(reserved.id(), new CableChoice(allowed, joined, CableUse.SPUR));
            }
        }
    }

    /** Route of a link to a gateway; from the host if {@code from} is −1. */
    Length link(int from, int to) {
        return lengths.cable(linkWay(from, to));
    }

    /** The way of the same link, m. */
    double linkWay(int from, int to) {
        return lengths.way(start(from), position(to));
    }

    private Map<String, Position> positions() {
        Map<String, Position> positions = new HashMap<>();
        axes.stream().filter(axis -> !axis.isToCome()).forEach(axis -> positions.put(axis.id(), axis.position()));
        return positions;
    }

    /** Where a link starts. */
    private Position start(int from) {
        return from < 0 ? network.host().position() : position(from);
    }

    private Position position(int place) {
        return network.places().get(place).position();
    }

    /** Whether an axis may hang on a gateway in a place: on all it reaches, unless its place is fixed. */
    boolean allowed(int axis, int place) {
        ReservedAxis reserved = axes.get(axis).reserved();
        String only = reserved == null ? fixed.get(axes.get(axis).id()) : reserved.place();
        return only == null || only.equals(network.places().get(place).id());
    }

    /** Route of a spur. */
    Length spur(int axis, int place) {
        return lengths.cable(spurWay(axis, place));
    }

    /** The way of a spur, m; to the farthest corner of where the drive unit of an axis to come may stand. */
    double spurWay(int axis, int place) {
        Position near = axes.get(axis).position();
        ReservedAxis reserved = axes.get(axis).reserved();
        Position far = reserved == null ? null : reserved.farCorner();
        if (far == null) {
            return lengths.way(position(place), near);
        }
        return corners(near, far).stream()
                .mapToDouble(corner -> lengths.way(position(place), corner))
                .max()
                .orElseThrow();
    }

    private static List<Position> corners(Position near, Position far) {
        List<Position> corners = new ArrayList<>();
        for (Length x : List.of(near.x(), far.x())) {
            for (Length y : List.of(near.y(), far.y())) {
                for (Length z : List.of(near.z(), far.z())) {
                    corners.add(new Position(x, y, z));
                }
            }
        }
        return corners;
    }

    /** The cables that may serve an axis as spur. */
    CableChoice spurCables(int axis) {
        ReservedAxis reserved = axes.get(axis).reserved();
        return reserved == null ? spurCables : reservedCables.getOrDefault(reserved.id(), spurCables);
    }

    Optional<LaidCable> linkCable(int from, int to) {
        return (from < 0 ? hostCables : trunkCables).forRoute(link(from, to));
    }

    Optional<LaidCable> spurCable(int axis, int place) {
        return allowed(axis, place) ? spurCables(axis).forRoute(spur(axis, place)) : Optional.empty();
    }
}
