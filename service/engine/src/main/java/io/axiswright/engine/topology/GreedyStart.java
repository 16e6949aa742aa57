package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Opens one gateway after the other, always the one that connects its axes at the least cost for each. The best step at a
 * place is kept until something near it changes.
 */
final class GreedyStart {

    /** Cheapest spots that accept a gateway and are tried for it: the command rate left may differ. */
    private static final int SPOTS = 3;

    /** A gateway to open with its axes, or an axis for a gateway that is there ({@code spot} null). */
    private record Step(
            @Nullable Insertion spot, @Nullable Node node, int type, List<Integer> axes, double costPerAxis) {}

    /** A gateway with the axes it takes, if any, and whether the commands of some were too many for its trunk. */
    private record Filling(@Nullable Step step, boolean rateBinds) {}

    private final LayoutModel model;
    private final Surroundings surroundings;
    private final Relays relays;
    private final SearchBreadth breadth;
    private final long[] worth;
    private final StopZones zones;
    private final boolean[] connected;
    private final int[] standing;
    private final Layout layout;
    private final TrunkState[] states;
    private final List<Optional<Step>> openings = new ArrayList<>();
    private final Map<Node, Optional<Step>> joinings = new HashMap<>();

    /**
     * A start.
     *
     * @param layout what is there already; goes on from there and changes it
     * @param worth what connecting each axis is worth: dear axes come first
     */
    GreedyStart(
            LayoutModel model,
            Surroundings surroundings,
            Relays relays,
            SearchBreadth breadth,
            long[] worth,
            Layout layout) {
        this.model = model;
        this.surroundings = surroundings;
        this.relays = relays;
        this.breadth = breadth;
        this.worth = worth;
        this.connected = new boolean[worth.length];
        this.layout = layout;
        this.standing = new int[model.places()];
        for (Node node : layout.nodes()) {
            standing[node.place]++;
            node.axes.forEach(axis -> connected[axis] = true);
        }
        this.zones = new StopZones(model);
        this.states =
                layout.trunks.stream().map(trunk -> TrunkState.of(model, trunk)).toArray(TrunkState[]::new);
    }

    /** Connects what it can. */
    void build() {
        for (int place = 0; place < model.places(); place++) {
            openings.add(Optional.ofNullable(opening(place)));
        }
        for (Trunk trunk : layout.trunks) {
            trunk.chain.forEach(node -> joinings.put(node, Optional.ofNullable(joining(trunk, node))));
        }
        for (Step step = next(); step != null; step = next()) {
            if (step.spot != null) {
                step.spot.places().forEach(place -> standing[place]++);
            }
            Node node = step.spot == null ? Objects.requireNonNull(step.node) : step.spot.open(step.type);
            node.axes.addAll(step.axes);
            step.axes.forEach(axis -> connected[axis] = true);
            refresh(step, node);
        }
    }

    private @Nullable Step next() {
        Step best = null;
        for (Trunk trunk : layout.trunks) {
            for (Node node : trunk.chain) {
                best = better(
                        best, joinings.getOrDefault(node, Optional.empty()).orElse(null));
            }
        }
        for (Optional<Step> opening : openings) {
            best = better(best, opening.orElse(null));
        }
        return best;
    }

    /** Looks again wherever the step taken may have changed the best one. */
    private void refresh(Step taken, Node changed) {
        Trunk trunk = trunkOf(changed);
        states[trunk.port] = TrunkState.of(model, trunk);
        for (Trunk other : layout.trunks) {
            for (Node node : other.chain) {
                Optional<Step> known = joinings.get(node);
                if (other == trunk || known == null || outdated(known)) {
                    joinings.put(node, Optional.ofNullable(joining(other, node)));
                }
            }
        }
        var stale = new boolean[model.places()];
        if (taken.spot != null) {
            stale[changed.place] = true;
            Arrays.stream(surroundings.placesOfPlace(changed.place))
                    .limit(breadth.around())
                    .forEach(near -> stale[near] = true);
        }
        for (int place = 0; place < stale.length; place++) {
            Optional<Step> known = openings.get(place);
            boolean onTrunk = known.map(step -> step.spot)
                    .filter(spot -> spot.trunk() == trunk)
                    .isPresent();
            if (stale[place] || onTrunk || outdated(known)) {
                openings.set(place, Optional.ofNullable(opening(place)));
            }
        }
    }

    private boolean outdated(Optional<Step> step) {
        return step.isPresent()
                && (step.get().axes.stream().anyMatch(axis -> connected[axis])
                        || (step.get().spot != null && !roomForRelays(step.get().spot)));
    }

    private Trunk trunkOf(Node node) {
        return layout.trunks.stream()
                .filter(trunk -> trunk.chain.contains(node))
                .findFirst()
                .orElseThrow();
    }

    private @Nullable Step joining(Trunk trunk, Node node) {
        if (node.axes.size() == model.types().get(node.type).drivePorts()) {
            return null;
        }
        for (int axis : unconnected(node.place)) {
            node.axes.add(axis);
            boolean holds = LayoutRules.hold(model, trunk);
            node.axes.removeLast();
            if (holds) {
                long cost = net(axis, node.place) + model.separations().cost(node.axes, axis);
                return new Step(null, node, node.type, List.of(axis), cost);
            }
        }
        return null;
    }

    private @Nullable Step opening(int place) {
        if (standing[place] >= model.room()[place]) {
            return null;
        }
        List<Integer> axes = unconnected(place);
        if (axes.isEmpty()) {
            return null;
        }
        List<Insertion> spots = spots(place, 0);
        Map<Integer, List<Integer>> byZone = zones.split(axes);
        Step best = null;
        for (int type = 0; type < model.types().size(); type++) {
            if (type > 0 && model.couples()) {
                spots = spots(place, type);
            }
            if (spots.isEmpty()) {
                continue;
            }
            for (var inZone : byZone.entrySet()) {
                List<Integer> candidates = inZone.getValue();
                double least = leastPerAxis(place, model.types().get(type), candidates, spots.getFirst());
                if (best == null || least < best.costPerAxis) {
                    best = better(best, opening(place, type, inZone.getKey(), candidates, spots));
                }
            }
        }
        return best;
    }

    /** What each axis costs at the cheapest spot, were there brake outputs and commands for all: never more than in truth. */
    private double leastPerAxis(int place, LayoutModel.Type type, List<Integer> candidates, Insertion cheapest) {
        double open = (double) type.price() + cheapest.cost();
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < Math.min(type.drivePorts(), candidates.size()); k++) {
            open += net(candidates.get(k), place);
            least = Math.min(least, open / (k + 1));
        }
        return least;
    }

    private List<Insertion> spots(int place, int type) {
        return Insertion.spots(model, layout.trunks, place, type, relays).stream()
                .filter(this::roomForRelays)
                .sorted(Comparator.comparingLong(Insertion::cost))
                .toList();
    }

    private boolean roomForRelays(Insertion spot) {
        return spot.places().stream().allMatch(place -> standing[place] < model.room()[place]);
    }

    private @Nullable Step opening(int place, int type, int zone, List<Integer> axes, List<Insertion> spots) {
        Step best = null;
        int tried = 0;
        for (Insertion spot : spots) {
            if (accepts(spot, model.types().get(type), zone)) {
                Filling filling = filled(spot, place, type, axes, states[spot.trunk().port].rate());
                best = better(best, filling.step);
                tried++;
                // a dearer spot is better only where it takes axes whose commands are too many for this one
                if (tried == SPOTS || !filling.rateBinds) {
                    break;
                }
            }
        }
        return best;
    }

    private boolean accepts(Insertion spot, LayoutModel.Type type, int zone) {
        TrunkState state = states[spot.trunk().port];
        int depth = spot.trunk().chain.size() + spot.places().size();
        if (depth > Math.min(type.chainDepth(), state.depth())) {
            return false;
        }
        boolean oneZone = zones.count() > 1 && (type.scope() != StopScope.NONE || state.scoped());
        if (oneZone == (zone == StopZones.ANY)) {
            return false;
        }
        return state.accepts(
                type.scope(),
                switch (zone) {
                    // A single zone in all needs no separation, yet is the zone that joins the trunk.
                    case StopZones.ANY -> zones.count() - 1;
                    case StopZones.NONE -> state.zone();
                    default -> zone;
                });
    }

    private Filling filled(Insertion spot, int place, int typeIndex, List<Integer> candidates, long rateLeft) {
        var type = model.types().get(typeIndex);
        double open = (double) type.price() + spot.cost();
        var axes = new ArrayList<Integer>();
        int brakes = 0;
        long rate = 0;
        boolean rateBinds = false;
        int bestCount = 0;
        double bestShare = Double.POSITIVE_INFINITY;
        for (int index : candidates) {
            var axis = model.axes().get(index);
            if (axes.size() == type.drivePorts()) {
                break;
            }
            if (axis.brake() && brakes == type.brakeOutputs()) {
                continue;
            }
            if (rate + axis.rate() > rateLeft) {
                rateBinds = true;
                continue;
            }
            if (!model.separations().hold(axes, index)) {
                continue;
            }
            open += model.separations().cost(axes, index);
            axes.add(index);
            brakes += axis.brake() ? 1 : 0;
            rate += axis.rate();
            open += net(index, place);
            if (open / axes.size() < bestShare) {
                bestShare = open / axes.size();
                bestCount = axes.size();
            }
        }
        return new Filling(
                bestCount == 0
                        ? null
                        : new Step(spot, null, typeIndex, List.copyOf(axes.subList(0, bestCount)), bestShare),
                rateBinds);
    }

    /** The nearest axes still to be connected, those that pay most first. */
    private List<Integer> unconnected(int place) {
        return Arrays.stream(surroundings.axesOfPlace(place))
                .filter(axis -> !connected[axis])
                .limit((long) breadth.choice() * model.mostDrivePorts())
                .boxed()
                .sorted(Comparator.comparingLong(axis -> net(axis, place)))
                .toList();
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
