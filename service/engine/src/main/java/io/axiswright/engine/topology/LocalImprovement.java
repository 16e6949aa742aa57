package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.List;

/**
 * Improves a layout step by step until no single step helps: an axis to another gateway, two axes exchanged, a gateway to
 * another place or type, to another spot in the trunks, closed, or opened anew.
 */
final class LocalImprovement {

    /** Rounds after which it stops even while it still gains: a guard, hardly ever met. */
    private static final int MOST_ROUNDS = 60;

    private final LayoutModel model;
    private final Layout layout;
    private final Relays relays;
    private final Trunk[] trunkOf;
    private final Node[] nodeOf;

    LocalImprovement(LayoutModel model, Relays relays, Layout layout) {
        this.model = model;
        this.relays = relays;
        this.layout = layout.copy();
        this.trunkOf = new Trunk[model.axes().size()];
        this.nodeOf = new Node[model.axes().size()];
        index();
    }

    /** Notes where each axis hangs; single steps keep it up to date themselves. */
    private void index() {
        for (Trunk trunk : layout.trunks) {
            for (Node node : trunk.chain) {
                for (int axis : node.axes) {
                    trunkOf[axis] = trunk;
                    nodeOf[axis] = node;
                }
            }
        }
    }

    /** The improved layout; the one given stays as it was. */
    Layout run() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            boolean gained = moveAxes() | exchangeAxes() | rebuildGateways() | shiftGateways() | closeGateways();
            if (!gained && !openGateways()) {
                break;
            }
        }
        return layout;
    }

    private boolean moveAxes() {
        boolean gained = false;
        for (int axis = 0; axis < model.axes().size(); axis++) {
            for (Trunk to : layout.trunks) {
                for (Node node : to.chain) {
                    gained |= moveAxis(axis, to, node);
                }
            }
        }
        return gained;
    }

    private boolean moveAxis(int axis, Trunk to, Node node) {
        Trunk from = trunkOf[axis];
        Node old = nodeOf[axis];
        if (old == node || !spur(axis, node).betterThan(spur(axis, old))) {
            return false;
        }
        old.axes.remove((Integer) axis);
        node.axes.add(axis);
        if (LayoutRules.hold(model, to) && LayoutRules.hold(model, from)) {
            trunkOf[axis] = to;
            nodeOf[axis] = node;
            return true;
        }
        node.axes.remove((Integer) axis);
        old.axes.add(axis);
        return false;
    }

    private boolean exchangeAxes() {
        boolean gained = false;
        for (int a = 0; a < model.axes().size(); a++) {
            for (int b = a + 1; b < model.axes().size(); b++) {
                gained |= exchange(a, b);
            }
        }
        return gained;
    }

    private boolean exchange(int a, int b) {
        Trunk trunkA = trunkOf[a];
        Trunk trunkB = trunkOf[b];
        Node nodeA = nodeOf[a];
        Node nodeB = nodeOf[b];
        if (nodeA.place == nodeB.place) {
            return false;
        }
        Score now = spur(a, nodeA).plus(spur(b, nodeB));
        if (!spur(a, nodeB).plus(spur(b, nodeA)).betterThan(now)) {
            return false;
        }
        swap(nodeA, a, nodeB, b);
        if (LayoutRules.hold(model, trunkA) && LayoutRules.hold(model, trunkB)) {
            trunkOf[a] = trunkB;
            trunkOf[b] = trunkA;
            nodeOf[a] = nodeB;
            nodeOf[b] = nodeA;
            return true;
        }
        swap(nodeA, b, nodeB, a);
        return false;
    }

    static void swap(Node nodeA, int a, Node nodeB, int b) {
        nodeA.axes.set(nodeA.axes.indexOf(a), b);
        nodeB.axes.set(nodeB.axes.indexOf(b), a);
    }

    private boolean rebuildGateways() {
        boolean gained = false;
        for (Trunk trunk : layout.trunks) {
            for (Node node : trunk.chain) {
                for (int place = 0; place < model.places(); place++) {
                    for (int type = 0; type < model.types().size(); type++) {
                        gained |= rebuild(trunk, node, place, type);
                    }
                }
            }
        }
        return gained;
    }

    private boolean rebuild(Trunk trunk, Node node, int place, int type) {
        int oldPlace = node.place;
        int oldType = node.type;
        Score before = Score.of(model, trunk);
        node.place = place;
        node.type = type;
        boolean room = place == oldPlace || layout.gatewaysAt(place) <= model.room()[place];
        if (room && Score.of(model, trunk).betterThan(before) && LayoutRules.hold(model, trunk)) {
            return true;
        }
        node.place = oldPlace;
        node.type = oldType;
        return false;
    }

    private boolean shiftGateways() {
        boolean gained = false;
        for (Trunk from : layout.trunks) {
            for (int k = 0; k < from.chain.size(); k++) {
                gained |= shift(from, k);
            }
        }
        return gained;
    }

    private boolean shift(Trunk from, int position) {
        Node node = from.chain.get(position);
        for (Trunk to : layout.trunks) {
            for (int spot = 0; spot <= to.chain.size() - (to == from ? 1 : 0); spot++) {
                Score before = sum(from, to);
                from.chain.remove(position);
                to.chain.add(spot, node);
                if (sum(from, to).betterThan(before) && LayoutRules.hold(model, from) && LayoutRules.hold(model, to)) {
                    index();
                    return true;
                }
                to.chain.remove(spot);
                from.chain.add(position, node);
            }
        }
        return false;
    }

    private boolean closeGateways() {
        boolean gained = false;
        for (int trunk = 0; trunk < layout.trunks.size(); trunk++) {
            for (int k = 0; k < layout.trunks.get(trunk).chain.size(); k++) {
                gained |= close(trunk, k);
            }
        }
        return gained;
    }

    private boolean close(int trunk, int position) {
        Layout trial = layout.copy();
        Trunk shorter = trial.trunks.get(trunk);
        List<Integer> homeless = shorter.chain.remove(position).axes;
        if (!LayoutRules.hold(model, shorter)) {
            return false;
        }
        for (int axis : homeless) {
            if (!connect(trial, axis)) {
                return false;
            }
        }
        return takeIfBetter(trial);
    }

    private boolean connect(Layout trial, int axis) {
        Node best = null;
        for (Trunk trunk : trial.trunks) {
            for (Node node : trunk.chain) {
                if (best != null && !spur(axis, node).betterThan(spur(axis, best))) {
                    continue;
                }
                node.axes.add(axis);
                if (LayoutRules.hold(model, trunk)) {
                    best = node;
                }
                node.axes.removeLast();
            }
        }
        if (best != null) {
            best.axes.add(axis);
        }
        return best != null;
    }

    private boolean openGateways() {
        for (int place = 0; place < model.places(); place++) {
            if (layout.gatewaysAt(place) >= model.room()[place]) {
                continue;
            }
            for (Insertion spot : Insertion.spots(model, layout, place, relays)) {
                for (int type = 0; type < model.types().size(); type++) {
                    if (open(spot, type)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean open(Insertion spot, int type) {
        if (spot.places().size() > 1) {
            return false;
        }
        Layout trial = layout.copy();
        Trunk trunk = trial.trunks.get(spot.trunk().port);
        trunk.chain.add(spot.position(), new Node(spot.places().getLast(), type));
        if (!LayoutRules.hold(model, trunk)) {
            return false;
        }
        var inner = new LocalImprovement(model, relays, trial);
        Trunk wider = inner.layout.trunks.get(trunk.port);
        for (int axis = 0; axis < nodeOf.length; axis++) {
            inner.moveAxis(axis, wider, wider.chain.get(spot.position()));
        }
        inner.closeGateways();
        return takeIfBetter(inner.layout);
    }

    private boolean takeIfBetter(Layout trial) {
        if (!Score.of(model, trial).betterThan(Score.of(model, layout))) {
            return false;
        }
        for (int port = 0; port < layout.trunks.size(); port++) {
            layout.trunks.get(port).chain.clear();
            layout.trunks.get(port).chain.addAll(trial.trunks.get(port).chain);
        }
        index();
        return true;
    }

    private Score sum(Trunk a, Trunk b) {
        return a == b ? Score.of(model, a) : Score.of(model, a).plus(Score.of(model, b));
    }

    private Score spur(int axis, Node node) {
        return new Score(model.spur().cost()[axis][node.place], model.spur().length()[axis][node.place]);
    }
}
