package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Opens one gateway after the other, always the one that connects its axes at the least cost for each. */
final class GreedyStart {

    /** A gateway to open with its axes, or axes for a gateway that is there ({@code spot} null). */
    private record Step(
            @Nullable Insertion spot, @Nullable Node node, int type, List<Integer> axes, double costPerAxis) {}

    private final LayoutModel model;
    private final Relays relays;
    private final long[] worth;
    private final List<List<Integer>> near = new ArrayList<>();
    private final StopZones zones;
    private final List<List<List<Integer>>> nearInZone;
    private final boolean[] connected;
    private final Layout layout;

    /**
     * A fresh start.
     *
     * @param worth what connecting each axis is worth: dear axes come first
     */
    GreedyStart(LayoutModel model, Relays relays, long[] worth) {
        this.model = model;
        this.relays = relays;
        this.worth = worth;
        this.connected = new boolean[worth.length];
        this.layout = new Layout(model.portRate().length);
        for (int place = 0; place < model.places(); place++) {
            int at = place;
            near.add(IntStream.range(0, worth.length)
                    .filter(axis -> model.spur().reaches(axis, at))
                    .boxed()
                    .sorted(Comparator.comparingLong(axis -> net(axis, at)))
                    .toList());
        }
        this.zones = new StopZones(model);
        this.nearInZone = near.stream().map(zones::split).toList();
    }

    /** Connects what it can; {@link #leftOver} tells which axes found no gateway. */
    Layout build() {
        for (Step step = next(); step != null; step = next()) {
            Node node = step.spot == null ? java.util.Objects.requireNonNull(step.node) : step.spot.open(step.type);
            node.axes.addAll(step.axes);
            step.axes.forEach(axis -> connected[axis] = true);
        }
        return layout;
    }

    List<Integer> leftOver() {
        return IntStream.range(0, connected.length)
                .filter(axis -> !connected[axis])
                .boxed()
                .toList();
    }

    private @Nullable Step next() {
        Step best = null;
        for (Trunk trunk : layout.trunks) {
            if (!trunk.chain.isEmpty()) {
                best = better(best, intoExisting(trunk));
            }
        }
        for (int place = 0; place < model.places(); place++) {
            if (near.get(place).stream().allMatch(axis -> connected[axis])
                    || layout.gatewaysAt(place) >= model.room()[place]) {
                continue;
            }
            for (Insertion spot : Insertion.spots(model, layout, place, relays)) {
                if (roomForRelays(spot)) {
                    best = better(best, opening(spot, place));
                }
            }
        }
        return best;
    }

    private boolean roomForRelays(Insertion spot) {
        return spot.places().stream().allMatch(place -> layout.gatewaysAt(place) < model.room()[place]);
    }

    private @Nullable Step intoExisting(Trunk trunk) {
        var state = TrunkState.of(model, trunk);
        Step best = null;
        for (Node node : trunk.chain) {
            var type = model.types().get(node.type);
            if (node.axes.size() == type.drivePorts()) {
                continue;
            }
            for (int index : near.get(node.place)) {
                if (connected[index] || model.axes().get(index).rate() > state.rate()) {
                    continue;
                }
                node.axes.add(index);
                boolean holds = LayoutRules.hold(model, trunk);
                node.axes.removeLast();
                if (holds) {
                    best = better(best, new Step(null, node, node.type, List.of(index), net(index, node.place)));
                    break;
                }
            }
        }
        return best;
    }

    private @Nullable Step opening(Insertion spot, int place) {
        var state = TrunkState.of(model, spot.trunk());
        int depth = spot.trunk().chain.size() + spot.places().size();
        Step best = null;
        for (int t = 0; t < model.types().size(); t++) {
            var type = model.types().get(t);
            if (depth > Math.min(type.chainDepth(), state.depth())) {
                continue;
            }
            boolean oneZone = zones.count() > 1 && (type.scope() != StopScope.NONE || state.scoped());
            for (int zone = oneZone ? 0 : -1; zone < (oneZone ? zones.count() : 0); zone++) {
                // A single zone in all needs no separation, yet is the zone that joins the trunk.
                int joining = oneZone ? zone : zones.count() - 1;
                if (state.accepts(type.scope(), joining)) {
                    best = better(best, filled(spot, place, t, zone, state.rate()));
                }
            }
        }
        return best;
    }

    private @Nullable Step filled(Insertion spot, int place, int t, int zone, long rateLeft) {
        var type = model.types().get(t);
        double open = (double) type.price() + spot.cost();
        var axes = new ArrayList<Integer>();
        int brakes = 0;
        long rate = 0;
        int bestCount = 0;
        double bestShare = Double.POSITIVE_INFINITY;
        for (int index : zone < 0 ? near.get(place) : nearInZone.get(place).get(zone)) {
            var axis = model.axes().get(index);
            boolean full = axes.size() == type.drivePorts();
            if (full) {
                break;
            }
            boolean fits = !connected[index]
                    && (!axis.brake() || brakes < type.brakeOutputs())
                    && rate + axis.rate() <= rateLeft;
            if (fits) {
                axes.add(index);
                brakes += axis.brake() ? 1 : 0;
                rate += axis.rate();
                open += net(index, place);
                if (open / axes.size() < bestShare) {
                    bestShare = open / axes.size();
                    bestCount = axes.size();
                }
            }
        }
        return bestCount == 0 ? null : new Step(spot, null, t, List.copyOf(axes.subList(0, bestCount)), bestShare);
    }

    private long net(int axis, int place) {
        return model.spur().cost()[axis][place] - worth[axis];
    }

    private static @Nullable Step better(@Nullable Step best, @Nullable Step other) {
        if (best == null || other == null) {
            return best == null ? other : best;
        }
        return other.costPerAxis < best.costPerAxis ? other : best;
    }
}
