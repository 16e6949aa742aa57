package io.axiswright.engine.topology;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A layout under construction: one trunk for every host port, the unused ones empty. */
final class Layout {

    /** A gateway: where it stands, its type, the axes on it. */
    static final class Node {
        int place;
        int type;
        final List<Integer> axes = new ArrayList<>();

        Node(int place, int type) {
            this.place = place;
            this.type = type;
        }
    }

    /** The gateways on one host port, the one next to the host first. */
    static final class Trunk {
        final int port;
        final List<Node> chain = new ArrayList<>();

        Trunk(int port) {
            this.port = port;
        }
    }

    final List<Trunk> trunks = new ArrayList<>();

    Layout(int ports) {
        for (int port = 0; port < ports; port++) {
            trunks.add(new Trunk(port));
        }
    }

    Layout copy() {
        var copy = new Layout(trunks.size());
        for (Trunk trunk : trunks) {
            for (Node node : trunk.chain) {
                var twin = new Node(node.place, node.type);
                twin.axes.addAll(node.axes);
                copy.trunks.get(trunk.port).chain.add(twin);
            }
        }
        return copy;
    }

    List<Node> nodes() {
        return trunks.stream().flatMap(trunk -> trunk.chain.stream()).toList();
    }

    int gatewaysAt(int place) {
        int count = 0;
        for (Trunk trunk : trunks) {
            for (Node node : trunk.chain) {
                if (node.place == place) {
                    count++;
                }
            }
        }
        return count;
    }

    /** Which node each axis hangs on; null where it hangs on none. */
    Node[] nodeOfAxis(int axes) {
        var nodes = new Node[axes];
        for (Node node : nodes()) {
            for (int axis : node.axes) {
                nodes[axis] = node;
            }
        }
        return nodes;
    }

    /**
     * Puts trunks of exchangeable ports into one order, so that equal layouts look equal: axes in order on each gateway,
     * trunks by their first gateway's place, type and lowest axis.
     */
    Layout inOrder(LayoutModel model) {
        var ordered = new Layout(trunks.size());
        for (Node node : nodes()) {
            node.axes.sort(Comparator.naturalOrder());
        }
        var waiting = new ArrayList<>(
                trunks.stream().filter(trunk -> !trunk.chain.isEmpty()).toList());
        waiting.sort(Comparator.comparingInt((Trunk trunk) -> trunk.chain.getFirst().place)
                .thenComparingInt(trunk -> trunk.chain.getFirst().type)
                .thenComparingInt(trunk -> lowestAxis(trunk))
                .thenComparingInt(trunk -> trunk.port));
        long[] kinds = model.portKinds();
        for (Trunk slot : ordered.trunks) {
            for (Trunk trunk : waiting) {
                if (kinds[trunk.port] == kinds[slot.port]) {
                    slot.chain.addAll(trunk.chain);
                    waiting.remove(trunk);
                    break;
                }
            }
        }
        return ordered;
    }

    private static int lowestAxis(Trunk trunk) {
        return trunk.chain.stream()
                .flatMap(node -> node.axes.stream())
                .min(Comparator.naturalOrder())
                .orElse(Integer.MAX_VALUE);
    }
}
