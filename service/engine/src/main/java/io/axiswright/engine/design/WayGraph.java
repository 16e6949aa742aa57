package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.PriorityQueue;

/** Cable ways as a graph: the shortest ways from a node to all others by E. W. Dijkstra, Numerische Mathematik 1 (1959) 269. */
final class WayGraph {

    private record Arc(int to, double length) {}

    private record Reached(int node, double way) {}

    private final List<WayNode> nodes;
    private final RouteRule rule;
    private final Map<String, Integer> indices = new HashMap<>();
    private final List<List<Arc>> arcs = new ArrayList<>();
    private final double[][] ways;

    /** The graph; edges to nodes that are not there are left out. */
    WayGraph(CableWays ways, RouteRule rule) {
        this.nodes = ways.nodes();
        this.rule = rule;
        this.ways = new double[nodes.size()][];
        for (int k = 0; k < nodes.size(); k++) {
            indices.put(nodes.get(k).id(), k);
            arcs.add(new ArrayList<>());
        }
        for (WayEdge edge : ways.edges()) {
            Integer from = indices.get(edge.from());
            Integer to = indices.get(edge.to());
            if (from != null && to != null) {
                Length stated = edge.length();
                double length = stated == null ? straight(position(from), position(to)) : stated.si();
                arcs.get(from).add(new Arc(to, length));
                arcs.get(to).add(new Arc(from, length));
            }
        }
    }

    static double straight(Position a, Position b) {
        return RouteMetric.STRAIGHT.way(a, b);
    }

    int index(String node) {
        return Objects.requireNonNull(indices.get(node));
    }

    Position position(int node) {
        return nodes.get(node).position();
    }

    /** The node nearest to a position; of equals the first. */
    int nearest(Position position) {
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < nodes.size(); node++) {
            double way = rule.way(position, position(node));
            if (way < least) {
                least = way;
                nearest = node;
            }
        }
        return nearest;
    }

    /** The shortest way from node to node, m; infinite where none leads. */
    double way(int from, int to) {
        if (ways[from] == null) {
            ways[from] = waysFrom(from);
        }
        return ways[from][to];
    }

    private double[] waysFrom(int start) {
        double[] way = new double[nodes.size()];
        Arrays.fill(way, Double.POSITIVE_INFINITY);
        way[start] = 0;
        var waiting = new PriorityQueue<Reached>(Comparator.comparingDouble(Reached::way));
        waiting.add(new Reached(start, 0));
        while (!waiting.isEmpty()) {
            Reached here = waiting.remove();
            // reached by a shorter way since it was put in line
            if (here.way() > way[here.node()]) {
                continue;
            }
            for (Arc arc : arcs.get(here.node())) {
                double on = here.way() + arc.length();
                if (on < way[arc.to()]) {
                    way[arc.to()] = on;
                    waiting.add(new Reached(arc.to(), on));
                }
            }
        }
        return way;
    }
}
