package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;

/** The last tie-break: where two axes may trade places for nothing, the lower one hangs on the lower gateway. */
final class IndexOrder {

    private IndexOrder() {}

    /** The layout in order; changed in place. */
    static Layout apply(LayoutModel model, Layout layout) {
        int axes = model.axes().size();
        var trunkOf = new Trunk[axes];
        var nodeOf = new Node[axes];
        var rank = new int[axes];
        int order = 0;
        for (Trunk trunk : layout.trunks) {
            for (Node node : trunk.chain) {
                for (int axis : node.axes) {
                    trunkOf[axis] = trunk;
                    nodeOf[axis] = node;
                    rank[axis] = order;
                }
                order++;
            }
        }
        for (int low = 0; low < axes; low++) {
            for (int high = low + 1; high < axes; high++) {
                if (rank[low] > rank[high] && tradeForNothing(model, low, high, nodeOf, trunkOf)) {
                    int lower = rank[high];
                    rank[high] = rank[low];
                    rank[low] = lower;
                }
            }
        }
        for (Node node : layout.nodes()) {
            node.axes.sort(java.util.Comparator.naturalOrder());
        }
        return layout;
    }

    private static boolean tradeForNothing(LayoutModel model, int low, int high, Node[] nodeOf, Trunk[] trunkOf) {
        Node lowNode = nodeOf[low];
        Node highNode = nodeOf[high];
        Score now = spur(model, low, lowNode).plus(spur(model, high, highNode));
        if (!spur(model, low, highNode).plus(spur(model, high, lowNode)).equals(now)) {
            return false;
        }
        long together = together(model, lowNode, highNode);
        swap(lowNode, low, highNode, high);
        if (!LayoutRules.hold(model, trunkOf[low])
                || !LayoutRules.hold(model, trunkOf[high])
                || together(model, lowNode, highNode) > together) {
            swap(lowNode, high, highNode, low);
            return false;
        }
        nodeOf[low] = highNode;
        nodeOf[high] = lowNode;
        Trunk trunk = trunkOf[low];
        trunkOf[low] = trunkOf[high];
        trunkOf[high] = trunk;
        return true;
    }

    private static long together(LayoutModel model, Node a, Node b) {
        return model.separations().cost(a.axes) + model.separations().cost(b.axes);
    }

    private static void swap(Node nodeA, int a, Node nodeB, int b) {
        nodeA.axes.set(nodeA.axes.indexOf(a), b);
        nodeB.axes.set(nodeB.axes.indexOf(b), a);
    }

    private static Score spur(LayoutModel model, int axis, Node node) {
        return new Score(model.spur().cost()[axis][node.place], model.spur().length()[axis][node.place]);
    }
}
