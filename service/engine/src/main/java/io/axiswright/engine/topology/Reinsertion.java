package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds a gateway for axes that found none: one near them that becomes of another type, or from which another axis moves on
 * to the next. Cheaper than a fresh start of the whole layout for a few axes.
 */
final class Reinsertion {

    private final LayoutModel model;
    private final LayoutEditor editor;

    /** A reinsertion into a layout, which it changes. */
    Reinsertion(LayoutModel model, Surroundings surroundings, SearchBreadth breadth, Layout layout) {
        this.model = model;
        this.editor = new LayoutEditor(model, surroundings, breadth, layout);
    }

    /** Finds what it can; the axes that remain without a gateway. */
    List<Integer> rest() {
        return IntStream.range(0, model.axes().size())
                .filter(axis -> editor.nodeOf(axis) == null && !found(axis))
                .boxed()
                .toList();
    }

    private boolean found(int axis) {
        for (Node node : editor.nearest(axis)) {
            if (editor.attempt(() -> hung(axis, node) || rebuilt(node) || movedOn(axis, node))) {
                return true;
            }
        }
        return false;
    }

    private boolean hung(int axis, Node node) {
        editor.hang(axis, node);
        return holds(node);
    }

    private boolean rebuilt(Node node) {
        for (int type = 0; type < model.types().size(); type++) {
            int other = type;
            if (editor.attempt(() -> {
                editor.rebuild(node, node.place, other);
                return holds(node);
            })) {
                return true;
            }
        }
        return false;
    }

    private boolean movedOn(int newcomer, Node node) {
        for (int axis : List.copyOf(node.axes)) {
            for (Node next : axis == newcomer ? List.<Node>of() : editor.nearest(axis)) {
                if (next != node
                        && editor.attempt(() -> {
                            editor.move(axis, next);
                            return holds(node) && holds(next);
                        })) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean holds(Node node) {
        return LayoutRules.hold(model, editor.trunkOf(node));
    }
}
