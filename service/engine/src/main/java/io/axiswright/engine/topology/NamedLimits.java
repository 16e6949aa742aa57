package io.axiswright.engine.topology;

import io.axiswright.engine.design.FixedPlace;
import io.axiswright.engine.design.Separation;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The limits of a request that can bind at all, each by its name: of axes, places and stop zones one each. */
final class NamedLimits {

    private static final String NETWORK = "the network";

    private final TopologyRequest request;
    private final LayoutModel model;
    private final List<NamedLimit> all = new ArrayList<>();

    private NamedLimits(TopologyRequest request, LayoutModel model) {
        this.request = request;
        this.model = model;
    }

    static NamedLimits of(TopologyRequest request, Routes routes, LayoutModel model) {
        var limits = new NamedLimits(request, model);
        limits.ofTheHost();
        limits.ofGateways();
        limits.ofLinks(routes);
        limits.ofPlaces();
        limits.ofAxes(routes);
        limits.ofWishes();
        return limits;
    }

    List<NamedLimit> all() {
        return all;
    }

    Set<LimitKind> kinds() {
        Set<LimitKind> kinds = EnumSet.noneOf(LimitKind.class);
        all.forEach(limit -> kinds.add(limit.kind()));
        return kinds;
    }

    /** All limits of some kinds, by index. */
    BitSet of(Collection<LimitKind> kinds) {
        var members = new BitSet();
        for (int k = 0; k < all.size(); k++) {
            members.set(k, kinds.contains(all.get(k).kind()));
        }
        return members;
    }

    private void ofTheHost() {
        int ports = model.portRate().length;
        whole(LimitKind.HOST_PORTS, "/design/network/host/ports", new Ratio(ports));
        if (model.totalRate() > Arrays.stream(model.portRate()).min().orElse(0)) {
            double slowest = request.network().host().ports().stream()
                    .mapToDouble(port -> port.commandRate().si())
                    .min()
                    .orElse(0);
            whole(LimitKind.COMMAND_RATE, "/design/network/host/ports", new Frequency(slowest));
        }
    }

    private void ofGateways() {
        String pointer = request.gatewaysPointer();
        int ports = request.gatewayTypes().stream()
                .mapToInt(type -> type.drivePorts())
                .max()
                .orElse(0);
        whole(LimitKind.CHAIN_DEPTH, pointer, new Ratio(model.deepestChain()));
        whole(LimitKind.DRIVE_PORTS, pointer, new Ratio(ports));
        if (model.brakes() > 0) {
            whole(LimitKind.BRAKE_OUTPUTS, pointer, new Ratio(model.mostBrakeOutputs()));
        }
        if (request.sparePorts() > 0) {
            whole(LimitKind.SPARE_PORTS, "/design/network/sparePorts", new Ratio(request.sparePorts()));
        }
        for (int zone = 0; zone < model.zones() && model.zonesMatter(); zone++) {
            int number = zone;
            NetworkAxis first =
                    request.axes().get(firstAxis(axis -> model.axes().get(axis).zone() == number));
            String id = java.util.Objects.requireNonNull(first.stopZone());
            all.add(new NamedLimit(
                    zone, new ClashingLimit(LimitKind.STOP_ZONE, id, first.pointer() + "/stopZone", null)));
        }
    }

    private int firstAxis(IntPredicate test) {
        return IntStream.range(0, model.axes().size()).filter(test).findFirst().orElseThrow();
    }

    private void ofLinks(Routes routes) {
        int places = model.places();
        if (IntStream.range(0, places * places)
                .anyMatch(k -> !routes.trunkCables.reaches(routes.link(k / places, k % places)))) {
            whole(LimitKind.TRUNK_LENGTH, request.cablesPointer(), routes.trunkCables.longest());
        }
        if (IntStream.range(0, places).anyMatch(place -> !routes.hostCables.reaches(routes.link(-1, place)))) {
            whole(LimitKind.HOST_LENGTH, request.cablesPointer(), routes.hostCables.longest());
        }
    }

    private void ofPlaces() {
        for (int place = 0; place < model.places(); place++) {
            String id = request.network().places().get(place).id();
            String pointer = "/design/network/places/" + place + "/maxGateways";
            Ratio room = new Ratio(model.room()[place]);
            all.add(new NamedLimit(place, new ClashingLimit(LimitKind.PLACE_ROOM, id, pointer, room)));
        }
    }

    private void ofAxes(Routes routes) {
        Length longest = routes.spurCables.longest();
        for (int k = 0; k < model.axes().size(); k++) {
            int axis = k;
            NetworkAxis named = request.axes().get(axis);
            if (IntStream.range(0, model.places())
                    .anyMatch(place -> !routes.spurCables.reaches(routes.spur(axis, place)))) {
                all.add(new NamedLimit(
                        axis,
                        new ClashingLimit(LimitKind.SPUR_LENGTH, named.id(), named.pointer() + "/position", longest)));
            }
        }
        Map<String, Integer> entries = new HashMap<>();
        List<FixedPlace> stated = request.network().fixed();
        List<FixedPlace> fixed = stated == null ? List.of() : stated;
        for (int entry = 0; entry < fixed.size(); entry++) {
            entries.put(fixed.get(entry).axis(), entry);
        }
        for (int axis = 0; axis < model.axes().size(); axis++) {
            String id = request.axes().get(axis).id();
            Integer entry = entries.get(id);
            if (entry != null) {
                String pointer = "/design/network/fixed/" + entry;
                all.add(new NamedLimit(axis, new ClashingLimit(LimitKind.FIXED_PLACE, id, pointer, null)));
            }
        }
    }

    private void ofWishes() {
        List<Separation> separations = request.network().separationList();
        for (int k = 0; k < separations.size(); k++) {
            if (model.separations().never(k)) {
                String pointer = "/design/network/separations/" + k;
                all.add(new NamedLimit(
                        k,
                        new ClashingLimit(
                                LimitKind.SEPARATION, separations.get(k).id(), pointer, null)));
            }
        }
        int toCome = request.axes().size() - request.present().size();
        if (toCome > 0) {
            whole(LimitKind.RESERVED_PORTS, "/design/network/reserved", new Ratio(toCome));
        }
    }

    private void whole(LimitKind kind, String pointer, Quantity available) {
        all.add(NamedLimit.whole(kind, NETWORK, pointer, available));
    }
}
