package io.axiswright.engine.topology;

import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import org.jspecify.annotations.Nullable;

/**
 * What a layout is judged by: cost first, then total length of cable.
 *
 * @param cost in the model's money unit
 * @param length in mm
 */
record Score(long cost, long length) implements Comparable<Score> {

    static final Score ZERO = new Score(0, 0);

    static Score of(LayoutModel model, Layout layout) {
        var sum = ZERO;
        for (Trunk trunk : layout.trunks) {
            sum = sum.plus(of(model, trunk));
        }
        return sum;
    }

    /** The better of two layouts, of which either may be missing; the first if they are alike. */
    static @Nullable Layout better(LayoutModel model, @Nullable Layout first, @Nullable Layout second) {
        if (first == null || second == null) {
            return first == null ? second : first;
        }
        return of(model, second).betterThan(of(model, first)) ? second : first;
    }

    static Score of(LayoutModel model, Trunk trunk) {
        long cost = 0;
        long length = 0;
        Node before = null;
        int row = 1;
        for (Node node : trunk.chain) {
            row = model.row(before, node, row);
            cost += model.types().get(node.type).price();
            if (row == 1) {
                LinkTable link = before == null ? model.host() : model.trunk();
                int from = before == null ? 0 : before.place;
                cost += link.cost()[from][node.place];
                length += link.length()[from][node.place];
            }
            for (int axis : node.axes) {
                cost += model.spur().cost()[axis][node.place];
                length += model.spur().length()[axis][node.place];
            }
            cost += model.separations().cost(node.axes);
            before = node;
        }
        return new Score(cost, length);
    }

    Score plus(Score other) {
        return new Score(cost + other.cost, length + other.length);
    }

    Score minus(Score other) {
        return new Score(cost - other.cost, length - other.length);
    }

    boolean betterThan(Score other) {
        return compareTo(other) < 0;
    }

    @Override
    public int compareTo(Score other) {
        return cost != other.cost ? Long.compare(cost, other.cost) : Long.compare(length, other.length);
    }
}
