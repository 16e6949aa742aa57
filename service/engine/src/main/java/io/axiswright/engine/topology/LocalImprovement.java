package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Improves a layout step by step until no single step helps: an axis to another gateway, two axes exchanged, a gateway to
 * another place or type, to another spot in the trunks, closed, or opened anew. Every step only looks at what is near. Axes
 * without a gateway stay so.
 */
final class LocalImprovement {

    /** Rounds after which it stops even while it still gains: a guard, hardly ever met. */
    private static final int MOST_ROUNDS = 60;

    /** Cheapest spots tried for a new gateway at one place. */
    private static final int SPOTS = 4;

    private final LayoutModel model;
    private final Surroundings surroundings;
    private final Relays relays;
    private final SearchBreadth breadth;
    private final Layout layout;
    private final LayoutEditor editor;

    LocalImprovement(
            LayoutModel model, Surroundings surroundings, Relays relays, SearchBreadth breadth, Layout layout) {
        this.model = model;
        this.surroundings = surroundings;
        this.relays = relays;
        this.breadth = breadth;
        this.layout = layout.copy();
        this.editor = new LayoutEditor(model, surroundings, breadth, this.layout);
    }

    /** The layout improved over a wide neighbourhood; as it was where that would take more gateways than allowed. */
    static Layout polished(LayoutModel model, Layout layout) {
        Layout better = model.within(
                new LocalImprovement(model, new Surroundings(model), new Relays(model), SearchBreadth.WIDE, layout)
                        .run());
        return better == null ? layout : better;
    }

    /** The improved layout; the one given stays as it was. */
    Layout run() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean gained = moveAxes() | exchangeAxes() | rebuildGateways() | shiftGateways() | closeGateways();
            if (!gained && !openGateways()) {
                break;
            }
            editor.settle();
        }
        return layout;
    }

    private boolean moveAxes() {
        boolean gained = false;
        for (int axis = 0; axis < model.axes().size(); axis++) {
            for (Node node : nearer(axis)) {
                if (moved(axis, node)) {
                    gained = true;
                    break;
                }
            }
        }
        return gained;
    }

    private boolean moved(int axis, Node to) {
        Node old = editor.nodeOf(axis);
        return old != null && attempt(() -> editor.move(axis, to), editor.trunkOf(to), editor.trunkOf(old));
    }

    private boolean exchangeAxes() {
        boolean gained = false;
        for (int axis = 0; axis < model.axes().size(); axis++) {
            gained |= exchanged(axis);
        }
        return gained;
    }

    /** One of two axes that gain by an exchange comes nearer to its gateway, so that looking nearer finds every exchange. */
    private boolean exchanged(int a) {
        Node nodeA = editor.nodeOf(a);
        if (nodeA == null) {
            return false;
        }
        for (Node nodeB : nearer(a)) {
            for (int b : List.copyOf(nodeB.axes)) {
                if (exchanged(a, nodeA, b, nodeB)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean exchanged(int a, Node nodeA, int b, Node nodeB) {
        Score now = editor.spur(a, nodeA).plus(editor.spur(b, nodeB));
        boolean nearer = editor.spur(a, nodeB).plus(editor.spur(b, nodeA)).betterThan(now);
        if (!nearer && !editor.crowded(a) && !editor.crowded(b)) {
            return false;
        }
        Runnable exchange = () -> {
            editor.move(a, nodeB);
            editor.move(b, nodeA);
        };
        return attempt(exchange, editor.trunkOf(nodeA), editor.trunkOf(nodeB));
    }

    private boolean rebuildGateways() {
        boolean gained = false;
        for (Node node : layout.nodes()) {
            for (int place : first(4 * breadth.nearest(), surroundings.placesOfPlace(node.place), node.place)) {
                for (int type = 0; type < model.types().size(); type++) {
                    gained |= rebuilt(node, place, type);
                }
            }
        }
        return gained;
    }

    private boolean rebuilt(Node node, int place, int type) {
        if (place != node.place && !editor.room(place)) {
            return false;
        }
        Trunk trunk = editor.trunkOf(node);
        return attempt(() -> editor.rebuild(node, place, type), trunk, trunk);
    }

    private boolean shiftGateways() {
        boolean gained = false;
        for (Node node : layout.nodes()) {
            gained |= shifted(node);
        }
        return gained;
    }

    private boolean shifted(Node node) {
        for (Trunk to : trunksAround(node.place)) {
            Trunk from = editor.trunkOf(node);
            for (int spot = 0; spot <= to.chain.size() - (to == from ? 1 : 0); spot++) {
                int position = spot;
                Runnable shift = () -> {
                    editor.take(node);
                    editor.put(node, to, position);
                };
                if (attempt(shift, from, to)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean closeGateways() {
        boolean gained = false;
        for (Node node : layout.nodes()) {
            gained |= attempt(() -> closed(node));
        }
        return gained;
    }

    private boolean closed(Node node) {
        for (int axis : List.copyOf(node.axes)) {
            if (!rehung(axis, node)) {
                return false;
            }
        }
        Trunk trunk = editor.trunkOf(node);
        editor.take(node);
        return holds(trunk);
    }

    /** Hangs the axis on the nearest other gateway that can take it. */
    private boolean rehung(int axis, Node away) {
        for (Node node : editor.nearest(axis)) {
            boolean rehung = node != away
                    && editor.attempt(() -> {
                        editor.move(axis, node);
                        return holds(editor.trunkOf(node));
                    });
            if (rehung) {
                return true;
            }
        }
        return false;
    }

    private boolean openGateways() {
        boolean gained = false;
        for (int place = 0; place < model.places(); place++) {
            for (Insertion spot : spots(place)) {
                for (int type = 0; type < model.types().size() && editor.room(place); type++) {
                    gained |= opened(spot, type);
                }
            }
        }
        return gained;
    }

    private List<Insertion> spots(int place) {
        return editor.room(place)
                ? Insertion.spots(model, trunksAround(place), place, Insertion.ANY, relays).stream()
                        .filter(spot -> spot.places().size() == 1)
                        .sorted(Comparator.comparingLong(Insertion::cost))
                        .limit(SPOTS)
                        .toList()
                : List.of();
    }

    /** A new gateway takes the axes it is nearer to, and gateways around it that are no longer worth it are closed. */
    private boolean opened(Insertion spot, int type) {
        return attempt(() -> {
            int place = spot.places().getLast();
            var node = new Node(place, type);
            if (spot.position() > spot.trunk().chain.size()) {
                return false;
            }
            editor.put(node, spot.trunk(), spot.position());
            if (!holds(spot.trunk())) {
                return false;
            }
            var left = new ArrayList<Node>();
            for (int axis : surroundings.axesOfPlace(place)) {
                Node old = editor.nodeOf(axis);
                if (node.axes.size() == model.types().get(type).drivePorts()) {
                    break;
                }
                boolean gains = old != null
                        && (editor.spur(axis, node).betterThan(editor.spur(axis, old)) || editor.crowded(axis));
                if (gains && moved(axis, node)) {
                    left.add(old);
                }
            }
            for (Node other : around(place, left)) {
                attempt(() -> closed(other));
            }
            return true;
        });
    }

    /** The gateways the axes came from, then those in the places around. */
    private Iterable<Node> around(int place, List<Node> left) {
        var around = new LinkedHashSet<>(left);
        for (int near : surroundings.placesOfPlace(place)) {
            if (around.size() >= breadth.nearest()) {
                break;
            }
            around.addAll(editor.nodesAt(near));
        }
        return around;
    }

    /** Makes a change and keeps it if the limits hold and the layout is better for it. */
    private boolean attempt(BooleanSupplier change) {
        Score before = editor.score();
        return editor.attempt(() -> change.getAsBoolean() && editor.score().betterThan(before));
    }

    /** As above; the score is known at once, so the limits of the trunks are only looked at if the layout is better. */
    private boolean attempt(Runnable change, Trunk one, Trunk other) {
        Score before = editor.score();
        return editor.attempt(() -> {
            change.run();
            return editor.score().betterThan(before) && holds(one) && (other == one || holds(other));
        });
    }

    private boolean holds(Trunk trunk) {
        return LayoutRules.hold(model, trunk);
    }

    /** The nearest gateways the axis would be better connected to than where it hangs, nearest first; all if it is crowded. */
    private List<Node> nearer(int axis) {
        Node old = editor.nodeOf(axis);
        if (old == null) {
            return List.of();
        }
        if (editor.crowded(axis)) {
            return editor.nearest(axis).stream().filter(node -> node != old).toList();
        }
        Score now = editor.spur(axis, old);
        return editor.nearest(axis).stream()
                .takeWhile(node -> editor.spur(axis, node).betterThan(now))
                .toList();
    }

    /** The trunks that pass near a place, and every trunk without gateways yet. */
    private List<Trunk> trunksAround(int place) {
        var trunks = new LinkedHashSet<Trunk>();
        for (int near : surroundings.placesOfPlace(place)) {
            if (trunks.size() >= breadth.nearest()) {
                break;
            }
            editor.nodesAt(near).forEach(node -> trunks.add(editor.trunkOf(node)));
        }
        var rates = new HashSet<Long>();
        for (Trunk trunk : layout.trunks) {
            if (trunk.chain.isEmpty() && rates.add(model.portRate()[trunk.port])) {
                trunks.add(trunk);
            }
        }
        return List.copyOf(trunks);
    }

    private static int[] first(int count, int[] places, int own) {
        int[] nearest = new int[Math.min(count, places.length) + 1];
        nearest[0] = own;
        System.arraycopy(places, 0, nearest, 1, nearest.length - 1);
        return nearest;
    }
}
