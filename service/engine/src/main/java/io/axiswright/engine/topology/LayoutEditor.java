package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Changes a layout step by step and takes steps back. Keeps the score, where each axis hangs and which gateways stand in each
 * place, so that a trial costs what it changes and not a copy of the whole layout.
 */
final class LayoutEditor {

    private final LayoutModel model;
    private final Surroundings surroundings;
    private final SearchBreadth breadth;
    private final @Nullable Node[] nodeOf;
    private final Map<Node, Trunk> trunkOf = new HashMap<>();
    private final List<List<Node>> nodesAt = new ArrayList<>();
    private final List<Runnable> undo = new ArrayList<>();
    private Score score;

    /** An editor of the layout given, which it changes. */
    LayoutEditor(LayoutModel model, Surroundings surroundings, SearchBreadth breadth, Layout layout) {
        this.model = model;
        this.breadth = breadth;
        this.surroundings = surroundings;
        this.nodeOf = layout.nodeOfAxis(model.axes().size());
        this.score = Score.of(model, layout);
        for (int place = 0; place < model.places(); place++) {
            nodesAt.add(new ArrayList<>());
        }
        for (Trunk trunk : layout.trunks) {
            for (Node node : trunk.chain) {
                trunkOf.put(node, trunk);
                nodesAt.get(node.place).add(node);
            }
        }
    }

    Score score() {
        return score;
    }

    /** The gateway an axis hangs on; null if on none. */
    @Nullable
    Node nodeOf(int axis) {
        return nodeOf[axis];
    }

    /** The trunk a gateway stands in. */
    Trunk trunkOf(Node node) {
        return Objects.requireNonNull(trunkOf.get(node));
    }

    /** The gateways in a place; changes with the layout. */
    List<Node> nodesAt(int place) {
        return nodesAt.get(place);
    }

    /** Whether one more gateway fits in a place. */
    boolean room(int place) {
        return nodesAt.get(place).size() < model.room()[place];
    }

    /** Makes a change and takes it back if it says that it does not do. */
    boolean attempt(BooleanSupplier change) {
        int mark = undo.size();
        if (change.getAsBoolean()) {
            return true;
        }
        while (undo.size() > mark) {
            undo.removeLast().run();
        }
        return false;
    }

    /** Forgets how to take steps back. */
    void settle() {
        undo.clear();
    }

    /** The gateways nearest to an axis, nearest first. */
    List<Node> nearest(int axis) {
        var nearest = new ArrayList<Node>();
        for (int place : surroundings.placesOfAxis(axis)) {
            if (nearest.size() >= breadth.nearest()) {
                break;
            }
            nearest.addAll(nodesAt(place));
        }
        return nearest;
    }

    /** Hangs an axis that hangs nowhere on a gateway. */
    void hang(int axis, Node on) {
        Score before = score;
        score = score.plus(spur(axis, on));
        if (model.separations().any()) {
            score = score.plus(joining(axis, on));
        }
        on.axes.add(axis);
        nodeOf[axis] = on;
        undo.add(() -> {
            on.axes.removeLast();
            nodeOf[axis] = null;
            score = before;
        });
    }

    /** Hangs an axis that hangs on a gateway on another. */
    void move(int axis, Node to) {
        Node from = Objects.requireNonNull(nodeOf[axis]);
        int index = from.axes.indexOf(axis);
        Score before = score;
        from.axes.remove(index);
        score = score.plus(spur(axis, to)).minus(spur(axis, from));
        if (model.separations().any()) {
            score = score.plus(joining(axis, to)).minus(joining(axis, from));
        }
        to.axes.add(axis);
        nodeOf[axis] = to;
        undo.add(() -> {
            to.axes.removeLast();
            from.axes.add(index, axis);
            nodeOf[axis] = from;
            score = before;
        });
    }

    /** Takes a gateway with its axes out of its trunk. */
    void take(Node node) {
        Trunk trunk = trunkOf(node);
        int position = trunk.chain.indexOf(node);
        Score before = score;
        score = score.minus(Score.of(model, trunk));
        trunk.chain.remove(position);
        score = score.plus(Score.of(model, trunk));
        nodesAt.get(node.place).remove(node);
        trunkOf.remove(node);
        undo.add(() -> {
            trunk.chain.add(position, node);
            nodesAt.get(node.place).add(node);
            trunkOf.put(node, trunk);
            score = before;
        });
    }

    /** Puts a gateway that stands nowhere, with its axes, into a trunk. */
    void put(Node node, Trunk trunk, int position) {
        Score before = score;
        score = score.minus(Score.of(model, trunk));
        trunk.chain.add(position, node);
        score = score.plus(Score.of(model, trunk));
        trunkOf.put(node, trunk);
        nodesAt.get(node.place).add(node);
        undo.add(() -> {
            trunk.chain.remove(position);
            nodesAt.get(node.place).remove(node);
            trunkOf.remove(node);
            score = before;
        });
    }

    /** Makes a gateway one of another type in another place. */
    void rebuild(Node node, int place, int type) {
        Score before = score;
        int oldPlace = node.place;
        int oldType = node.type;
        score = score.minus(Score.of(model, trunkOf(node)));
        replace(node, place, type);
        score = score.plus(Score.of(model, trunkOf(node)));
        undo.add(() -> {
            replace(node, oldPlace, oldType);
            score = before;
        });
    }

    private void replace(Node node, int place, int type) {
        if (place != node.place) {
            nodesAt.get(node.place).remove(node);
            nodesAt.get(place).add(node);
        }
        node.place = place;
        node.type = type;
    }

    /** Whether an axis hangs with others it had better not. */
    boolean crowded(int axis) {
        Node node = nodeOf[axis];
        if (node == null || !model.separations().any()) {
            return false;
        }
        List<Integer> others = new ArrayList<>(node.axes);
        others.remove((Integer) axis);
        return model.separations().cost(others, axis) > 0;
    }

    /** What an axis not yet among those of a gateway adds by what they are to each other. */
    private Score joining(int axis, Node node) {
        return new Score(model.separations().cost(node.axes, axis), 0);
    }

    /** What connecting an axis to a gateway adds by its cable. */
    Score spur(int axis, Node node) {
        return new Score(model.spur().cost()[axis][node.place], model.spur().length()[axis][node.place]);
    }
}
