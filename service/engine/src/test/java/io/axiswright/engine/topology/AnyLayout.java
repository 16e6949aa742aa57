package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Whether a small request has a layout if only some of its limits are in force: tries every way to hang the axes on gateways, then
 * every way to string these up with relaying gateways between. Knows no solver.
 */
final class AnyLayout {

    /** Ports and gateways in a place that never bind: no machine of the tests has more axes. */
    private static final int PLENTY = 5;

    private static final class Node {
        private final int place;
        private final GatewayType type;
        private final List<NetworkAxis> axes;

        Node(int place, GatewayType type, List<NetworkAxis> axes) {
            this.place = place;
            this.type = type;
            this.axes = axes;
        }
    }

    private final TopologyRequest request;
    private final List<Place> places;
    private final Set<String> inForce = new HashSet<>();
    private final List<Node> nodes = new ArrayList<>();
    private final int[] room;
    private final Set<List<Object>> failed = new HashSet<>();

    private AnyLayout(TopologyRequest request, List<ClashingLimit> limits) {
        this.request = request;
        this.places = request.network().places();
        limits.forEach(limit -> inForce.add(limit.limit() + " " + limit.subject()));
        this.room = IntStream.range(0, places.size())
                .map(k -> holds(LimitKind.PLACE_ROOM, places.get(k).id())
                        ? places.get(k).maxGateways()
                        : PLENTY)
                .toArray();
    }

    static boolean exists(TopologyRequest request, List<ClashingLimit> inForce) {
        return new AnyLayout(request, inForce).axis(0);
    }

    private boolean holds(LimitKind kind, String subject) {
        return inForce.contains(kind + " " + subject);
    }

    private boolean holds(LimitKind kind) {
        return holds(kind, "the network");
    }

    private boolean axis(int index) {
        if (index == request.axes().size()) {
            failed.clear();
            return strung(0, new ArrayList<>(nodes), new ArrayList<>(), ports());
        }
        NetworkAxis axis = request.axes().get(index);
        for (Node node : List.copyOf(nodes)) {
            if (mayHang(axis, node)) {
                node.axes.add(axis);
                boolean found = axis(index + 1);
                node.axes.removeLast();
                if (found) {
                    return true;
                }
            }
        }
        for (int place = 0; place < places.size(); place++) {
            for (GatewayType type : request.gatewayTypes()) {
                Node node = new Node(place, type, new ArrayList<>());
                if (room[place] > 0 && mayHang(axis, node)) {
                    room[place]--;
                    nodes.add(node);
                    node.axes.add(axis);
                    boolean found = axis(index + 1);
                    nodes.removeLast();
                    room[place]++;
                    if (found) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean mayHang(NetworkAxis axis, Node node) {
        Place place = places.get(node.place);
        List<FixedPlace> fixed = request.network().fixed();
        if (fixed != null
                && holds(LimitKind.FIXED_PLACE, axis.id())
                && fixed.stream()
                        .anyMatch(one ->
                                one.axis().equals(axis.id()) && !one.place().equals(place.id()))) {
            return false;
        }
        if (holds(LimitKind.SPUR_LENGTH, axis.id()) && !reaches(CableUse.SPUR, axis.position(), place.position())) {
            return false;
        }
        List<NetworkAxis> axes = new ArrayList<>(node.axes);
        axes.add(axis);
        Integer spare = request.network().sparePorts();
        int kept = spare != null && holds(LimitKind.SPARE_PORTS) ? spare : 0;
        if (holds(LimitKind.DRIVE_PORTS) && axes.size() > node.type.drivePorts() - kept) {
            return false;
        }
        if (holds(LimitKind.BRAKE_OUTPUTS)
                && axes.stream().filter(NetworkAxis::holdingBrake).count() > node.type.brakeOutputs()) {
            return false;
        }
        if (request.network().separationList().stream()
                .anyMatch(apart -> apart.price() == null
                        && holds(LimitKind.SEPARATION, apart.id())
                        && axes.stream()
                                        .filter(one -> apart.axes().contains(one.id()))
                                        .count()
                                > 1)) {
            return false;
        }
        return node.type.stopScope() == StopScope.NONE || zones(axes) <= 1;
    }

    private int zones(List<NetworkAxis> axes) {
        return (int) axes.stream()
                .filter(axis -> axis.stopZone() != null && holds(LimitKind.STOP_ZONE, axis.stopZone()))
                .map(NetworkAxis::stopZone)
                .distinct()
                .count();
    }

    private List<Double> ports() {
        List<Double> rates = new ArrayList<>();
        for (HostPort port : request.network().host().ports()) {
            rates.add(holds(LimitKind.COMMAND_RATE) ? port.commandRate().si() : 1e12);
        }
        double fastest = rates.stream().mapToDouble(rate -> rate).max().orElse(0);
        for (int k = 0; k < PLENTY && !holds(LimitKind.HOST_PORTS); k++) {
            rates.add(fastest);
        }
        return rates;
    }

    /** Whether the gateways left can be strung up from the port on; the trunk so far is not closed yet. */
    private boolean strung(int port, List<Node> left, List<Node> trunk, List<Double> rates) {
        if (!trunkHolds(trunk, rates.get(port))) {
            return false;
        }
        if (left.isEmpty()) {
            return true;
        }
        return failed.add(state(port, left, trunk, rates)) && extended(port, left, trunk, rates);
    }

    /** All of the trunk and of what is left that matters to whether it can be completed. */
    private List<Object> state(int port, List<Node> left, List<Node> trunk, List<Double> rates) {
        List<NetworkAxis> axes =
                trunk.stream().flatMap(node -> node.axes.stream()).toList();
        int relays = 0;
        while (relays < trunk.size()
                && trunk.get(trunk.size() - 1 - relays).axes.isEmpty()) {
            relays++;
        }
        return List.of(
                port,
                left.stream().map(nodes::indexOf).toList(),
                trunk.size(),
                trunk.stream().mapToInt(node -> node.type.chainDepth()).min().orElse(0),
                trunk.stream().anyMatch(node -> node.type.stopScope() == StopScope.TRUNK),
                axes.stream().map(axis -> String.valueOf(axis.stopZone())).collect(Collectors.toSet()),
                axes.stream().mapToDouble(axis -> axis.commandRate().si()).sum(),
                trunk.subList(Math.max(0, trunk.size() - 1 - relays), trunk.size()).stream()
                        .map(node -> node.place)
                        .toList(),
                relays,
                mayClose(port, left, trunk, rates),
                Arrays.toString(room));
    }

    private boolean extended(int port, List<Node> left, List<Node> trunk, List<Double> rates) {
        if (mayClose(port, left, trunk, rates) && strung(port + 1, left, new ArrayList<>(), rates)) {
            return true;
        }
        for (Node next : List.copyOf(left)) {
            if (links(trunk, next.place)) {
                List<Node> others = new ArrayList<>(left);
                others.remove(next);
                trunk.add(next);
                boolean found = strung(port, others, trunk, rates);
                trunk.removeLast();
                if (found) {
                    return true;
                }
            }
        }
        return (holds(LimitKind.TRUNK_LENGTH) || (trunk.isEmpty() && holds(LimitKind.HOST_LENGTH)))
                && relayed(port, left, trunk, rates);
    }

    /** Trunks that end with a relay are of no use; of ports alike the earlier ones have the earlier axes. */
    private boolean mayClose(int port, List<Node> left, List<Node> trunk, List<Double> rates) {
        if (port + 1 == rates.size()) {
            return false;
        }
        boolean alike = rates.subList(port, rates.size()).stream().distinct().count() == 1;
        if (trunk.isEmpty()) {
            return !alike;
        }
        Node earliest = nodes.stream()
                .filter(node -> left.contains(node) || trunk.contains(node))
                .findFirst()
                .orElseThrow();
        return !trunk.getLast().axes.isEmpty() && (!alike || trunk.contains(earliest));
    }

    private boolean relayed(int port, List<Node> left, List<Node> trunk, List<Double> rates) {
        for (int place = 0; place < places.size(); place++) {
            if (room[place] == 0 || relaysAlready(trunk, place) || !links(trunk, place)) {
                continue;
            }
            for (GatewayType type : request.gatewayTypes()) {
                room[place]--;
                trunk.add(new Node(place, type, List.of()));
                boolean found = strung(port, left, trunk, rates);
                trunk.removeLast();
                room[place]++;
                if (found) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A row of relays that comes back to a place goes a detour. */
    private static boolean relaysAlready(List<Node> trunk, int place) {
        for (int k = trunk.size() - 1; k >= 0; k--) {
            if (trunk.get(k).place == place) {
                return true;
            }
            if (!trunk.get(k).axes.isEmpty()) {
                return false;
            }
        }
        return false;
    }

    private boolean links(List<Node> trunk, int place) {
        return trunk.isEmpty()
                ? !holds(LimitKind.HOST_LENGTH)
                        || reaches(
                                CableUse.HOST,
                                request.network().host().position(),
                                places.get(place).position())
                : !holds(LimitKind.TRUNK_LENGTH)
                        || reaches(
                                CableUse.TRUNK,
                                places.get(trunk.getLast().place).position(),
                                places.get(place).position());
    }

    private boolean trunkHolds(List<Node> trunk, double rate) {
        List<NetworkAxis> axes =
                trunk.stream().flatMap(node -> node.axes.stream()).toList();
        boolean deep = trunk.stream().anyMatch(node -> trunk.size() > node.type.chainDepth());
        boolean whole = trunk.stream().anyMatch(node -> node.type.stopScope() == StopScope.TRUNK);
        double asked =
                axes.stream().mapToDouble(axis -> axis.commandRate().si()).sum();
        return !(deep && holds(LimitKind.CHAIN_DEPTH)) && !(whole && zones(axes) > 1) && asked <= rate + 1e-9;
    }

    private boolean reaches(CableUse use, Position from, Position to) {
        double route = request.network().route().between(from, to).si();
        for (CableAssembly cable : request.cableAssemblies()) {
            if (cable.use() == use && cable.length().si() >= route - 1e-9) {
                return true;
            }
        }
        return false;
    }
}
