package io.axiswright.engine.braking;

import java.util.ArrayList;
import java.util.List;

/** Takes down every change of state of a bus, up to some number of them. */
final class BusLog {

    private final int most;
    private final List<BusNode> nodes = new ArrayList<>();

    BusLog(int most) {
        this.most = most;
    }

    /** Whether it has room for more. */
    boolean open() {
        return nodes.size() < most;
    }

    void add(BusNode node) {
        nodes.add(node);
    }

    void clear() {
        nodes.clear();
    }

    List<BusNode> nodes() {
        return nodes;
    }
}
