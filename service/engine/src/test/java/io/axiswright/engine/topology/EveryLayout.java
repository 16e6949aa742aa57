package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.Place;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.Separation;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Tries every layout of a small request and remembers the cheapest: the plainest route to the optimum there is. */
final class EveryLayout {

    /** A gateway that might be bought: where, which, on which port, how many it is coupled to before it in a row. */
    private record Site(int port, int place, GatewayType type, int row) {}

    private final TopologyRequest request;
    private final EveryWay ways;
    private final List<Site> sites = new ArrayList<>();
    private final List<List<NetworkAxis>> axesOn = new ArrayList<>();
    private final int mostGateways;
    private double best = Double.POSITIVE_INFINITY;
    private double bestLength = Double.POSITIVE_INFINITY;

    private EveryLayout(TopologyRequest request, int mostGateways) {
        this.request = request;
        this.mostGateways = mostGateways;
        this.ways = new EveryWay(request);
    }

    /** Least cost and, among layouts of that cost, least length of cable; infinite if there is none. */
    static double[] cheapest(TopologyRequest request) {
        return cheapest(request, Integer.MAX_VALUE);
    }

    /** The same among layouts of no more than so many gateways. */
    static double[] cheapest(TopologyRequest request, int mostGateways) {
        var every = new EveryLayout(request, mostGateways);
        every.port(0, 0, 0);
        return new double[] {every.best, every.bestLength};
    }

    private void port(int port, double cost, double length) {
        if (port == request.network().host().ports().size()) {
            axis(0, cost, length);
            return;
        }
        extend(port, request.network().host().position(), true, 0, cost, length);
    }

    private void extend(int port, Position from, boolean first, int depth, double cost, double length) {
        port(port + 1, cost, length);
        int deepest = request.gatewayTypes().stream()
                .mapToInt(GatewayType::chainDepth)
                .max()
                .orElse(0);
        if (depth == deepest || sites.size() == mostGateways || cost > best) {
            return;
        }
        for (int k = 0; k < request.network().places().size(); k++) {
            Place place = request.network().places().get(k);
            int index = k;
            CableAssembly cable = cheapest(first ? CableUse.HOST : CableUse.TRUNK, from, place.position());
            long there = sites.stream().filter(site -> site.place == index).count();
            if (there == place.maxGateways()) {
                continue;
            }
            for (GatewayType type : request.gatewayTypes()) {
                double gateways = cost + price(type.price());
                if (cable != null) {
                    join(
                            new Site(port, k, type, 1),
                            depth,
                            gateways + price(cable.price()),
                            length + cable.length().si());
                }
                Site before = first ? null : sites.getLast();
                if (before != null
                        && before.place == k
                        && before.type.equals(type)
                        && type.directRow() != null
                        && before.row < type.directRow()) {
                    join(new Site(port, k, type, before.row + 1), depth, gateways, length);
                }
            }
        }
    }

    private void join(Site site, int depth, double cost, double length) {
        sites.add(site);
        axesOn.add(new ArrayList<>());
        if (sites.stream()
                .filter(other -> other.port == site.port)
                .allMatch(other -> depth < other.type.chainDepth())) {
            extend(site.port, request.network().places().get(site.place).position(), false, depth + 1, cost, length);
        }
        sites.removeLast();
        axesOn.removeLast();
    }

    private void axis(int index, double cost, double length) {
        if (cost > best + 1e-6) {
            return;
        }
        if (index == request.axes().size()) {
            double all = cost + sharing();
            if (holds() && (all < best - 1e-6 || (all < best + 1e-6 && length < bestLength - 1e-9))) {
                best = Math.min(best, all);
                bestLength = length;
            }
            return;
        }
        NetworkAxis axis = request.axes().get(index);
        for (int k = 0; k < sites.size(); k++) {
            Place place = request.network().places().get(sites.get(k).place);
            CableAssembly cable = spur(axis, place);
            if (cable != null
                    && allowed(axis, place)
                    && axesOn.get(k).size() < sites.get(k).type.drivePorts() - spare()) {
                axesOn.get(k).add(axis);
                axis(
                        index + 1,
                        cost + (axis.reserved() == null ? price(cable.price()) + move(axis, place) : 0),
                        length + cable.length().si());
                axesOn.get(k).removeLast();
            }
        }
    }

    private int spare() {
        Integer spare = request.network().sparePorts();
        return spare == null ? 0 : spare;
    }

    private @Nullable CableAssembly spur(NetworkAxis axis, Place place) {
        ReservedAxis reserved = axis.reserved();
        Position far = reserved == null ? null : reserved.farCorner();
        List<String> only = reserved == null ? null : reserved.spurCables();
        double route = 0;
        for (int corner = 0; corner < 8; corner++) {
            Position near = axis.position();
            Position other = far == null ? near : far;
            var at = new Position(
                    (corner & 1) == 0 ? near.x() : other.x(),
                    (corner & 2) == 0 ? near.y() : other.y(),
                    (corner & 4) == 0 ? near.z() : other.z());
            route = Math.max(route, ways.between(at, place.position()));
        }
        return cheapest(CableUse.SPUR, route, cable -> only == null || only.contains(cable.id()));
    }

    private boolean allowed(NetworkAxis axis, Place place) {
        ReservedAxis reserved = axis.reserved();
        if (reserved != null) {
            return reserved.place() == null || reserved.place().equals(place.id());
        }
        List<FixedPlace> fixed = request.network().fixed();
        return fixed == null
                || fixed.stream()
                        .allMatch(one ->
                                !one.axis().equals(axis.id()) || one.place().equals(place.id()));
    }

    private double move(NetworkAxis axis, Place place) {
        KeptLayout keep = request.network().keep();
        if (keep == null) {
            return 0;
        }
        List<String> known = request.network().places().stream().map(Place::id).toList();
        boolean away = keep.gateways().stream()
                .anyMatch(gateway -> gateway.axes().contains(axis.id())
                        && known.contains(gateway.place())
                        && !gateway.place().equals(place.id()));
        return away ? price(keep.movePrice()) : 0;
    }

    /** Infinite where two axes share a gateway that must not. */
    private double sharing() {
        double sum = 0;
        for (Separation separation : request.network().separationList()) {
            for (List<NetworkAxis> gateway : axesOn) {
                long here = gateway.stream()
                        .filter(axis -> separation
                                .axes()
                                .contains(
                                        axis.reserved() == null
                                                ? axis.id()
                                                : axis.reserved().id()))
                        .count();
                if (here > 1) {
                    sum += separation.price() == null
                            ? Double.POSITIVE_INFINITY
                            : (here - 1) * price(separation.price());
                }
            }
        }
        return sum;
    }

    private boolean holds() {
        for (int k = 0; k < sites.size(); k++) {
            GatewayType type = sites.get(k).type;
            if (axesOn.get(k).stream().filter(NetworkAxis::holdingBrake).count() > type.brakeOutputs()) {
                return false;
            }
            if (type.stopScope() != StopScope.NONE && zones(axesOn.get(k)) > 1) {
                return false;
            }
        }
        List<HostPort> ports = request.network().host().ports();
        for (int port = 0; port < ports.size(); port++) {
            var trunk = new ArrayList<NetworkAxis>();
            boolean whole = false;
            for (int k = 0; k < sites.size(); k++) {
                if (sites.get(k).port == port) {
                    trunk.addAll(axesOn.get(k));
                    whole |= sites.get(k).type.stopScope() == StopScope.TRUNK;
                }
            }
            double rate =
                    trunk.stream().mapToDouble(axis -> axis.commandRate().si()).sum();
            if (rate > ports.get(port).commandRate().si() + 1e-9 || (whole && zones(trunk) > 1)) {
                return false;
            }
        }
        return true;
    }

    private static int zones(List<NetworkAxis> axes) {
        var zones = new HashSet<String>();
        for (NetworkAxis axis : axes) {
            if (axis.stopZone() != null) {
                zones.add(axis.stopZone());
            }
        }
        return zones.size();
    }

    private @Nullable CableAssembly cheapest(CableUse use, Position from, Position to) {
        return cheapest(use, ways.between(from, to), cable -> true);
    }

    private @Nullable CableAssembly cheapest(CableUse use, double route, Predicate<CableAssembly> will) {
        CableAssembly best = null;
        for (CableAssembly cable : request.cableAssemblies()) {
            if (cable.use() != use || cable.length().si() < route - 1e-9 || !will.test(cable)) {
                continue;
            }
            double gain = best == null ? 1 : price(best.price()) - price(cable.price());
            if (gain > 0
                    || (gain == 0
                            && best != null
                            && cable.length().si() < best.length().si())) {
                best = cable;
            }
        }
        return best;
    }

    private static double price(io.axiswright.engine.quantity.@Nullable Money price) {
        return (price == null ? BigDecimal.ZERO : price.amount()).doubleValue();
    }
}
