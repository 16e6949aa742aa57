package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Length;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How long the cables of a machine must be: by its route rule alone, or along its cable ways where it has them. Remembers the
 * ways it has looked for, so it is for one thread.
 */
public final class CableLengths {

    private final RouteRule rule;
    private final @Nullable WayGraph graph;
    private final Map<Position, Integer> nodes = new HashMap<>();

    /**
     * The lengths of a network.
     *
     * @param network the network
     * @param axes positions of the axes by id, reserved ones too; read only where there are cable ways
     */
    public CableLengths(Network network, Map<String, Position> axes) {
        this.rule = network.route();
        CableWays ways = network.ways();
        this.graph = ways == null ? null : new WayGraph(ways, rule);
        if (ways != null && graph != null) {
            for (WayAttachment attachment : ways.attachmentList()) {
                Position position = attached(attachment, network, axes);
                if (position != null) {
                    nodes.put(position, graph.index(attachment.node()));
                }
            }
        }
    }

    /** The lengths of a design's network. */
    public static CableLengths of(Design design, Network network) {
        Map<String, Position> axes = new HashMap<>();
        if (network.ways() != null) {
            design.axes().forEach(axis -> axes.put(axis.id(), axis.position()));
        }
        return new CableLengths(network, axes);
    }

    /** Where an attached thing stands; null if it is not there. */
    static @Nullable Position attached(WayAttachment attachment, Network network, Map<String, Position> axes) {
        if (attachment.axis() != null) {
            Position there = axes.get(attachment.axis());
            return there == null ? reserved(attachment.axis(), network) : there;
        }
        return attachment.place() == null ? network.host().position() : place(attachment.place(), network);
    }

    private static @Nullable Position place(String id, Network network) {
        for (Place place : network.places()) {
            if (place.id().equals(id)) {
                return place.position();
            }
        }
        return null;
    }

    private static @Nullable Position reserved(String id, Network network) {
        for (ReservedAxis reserved : network.reservedList()) {
            if (reserved.id().equals(id)) {
                return reserved.position();
            }
        }
        return null;
    }

    /** Length of cable needed between two positions: the way times factor, plus slack at both ends. */
    public Length between(Position from, Position to) {
        return cable(way(from, to));
    }

    /** Length of cable needed for a way, m. */
    public Length cable(double way) {
        return rule.cable(way);
    }

    /** The way between two positions, m, without factor and slack. Asked again from the same position it costs little. */
    public double way(Position from, Position to) {
        if (graph == null) {
            return rule.way(from, to);
        }
        if (from.equals(to)) {
            return 0;
        }
        int first = node(graph, from);
        int last = node(graph, to);
        return rule.way(from, graph.position(first)) + graph.way(first, last) + rule.way(graph.position(last), to);
    }

    private int node(WayGraph graph, Position position) {
        return nodes.computeIfAbsent(position, graph::nearest);
    }
}
