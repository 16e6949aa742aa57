package io.axiswright.engine.topology;

import io.axiswright.engine.design.CableWays;
import io.axiswright.engine.design.Network;
import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.RouteMetric;
import io.axiswright.engine.design.WayAttachment;
import io.axiswright.engine.design.WayEdge;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Cable lengths by the table of all ways between all nodes, each way by way of each node: no search in it. */
final class EveryWay {

    private final TopologyRequest request;
    private final Network network;
    private final double[][] table;

    EveryWay(TopologyRequest request) {
        this.request = request;
        this.network = request.network();
        CableWays ways = network.ways();
        int nodes = ways == null ? 0 : ways.nodes().size();
        table = new double[nodes][nodes];
        for (int k = 0; k < nodes; k++) {
            Arrays.fill(table[k], Double.POSITIVE_INFINITY);
            table[k][k] = 0;
        }
        if (ways == null) {
            return;
        }
        List<String> ids = ways.nodes().stream().map(node -> node.id()).toList();
        for (WayEdge edge : ways.edges()) {
            int from = ids.indexOf(edge.from());
            int to = ids.indexOf(edge.to());
            double length = edge.length() == null
                    ? direct(
                            RouteMetric.STRAIGHT,
                            ways.nodes().get(from).position(),
                            ways.nodes().get(to).position())
                    : edge.length().si();
            table[from][to] = Math.min(table[from][to], length);
            table[to][from] = table[from][to];
        }
        for (int by = 0; by < nodes; by++) {
            for (int from = 0; from < nodes; from++) {
                for (int to = 0; to < nodes; to++) {
                    table[from][to] = Math.min(table[from][to], table[from][by] + table[by][to]);
                }
            }
        }
    }

    /** Length of cable needed, m. */
    double between(Position a, Position b) {
        return way(a, b) * network.route().factor()
                + 2 * network.route().slackPerEnd().si();
    }

    private double way(Position a, Position b) {
        CableWays ways = network.ways();
        if (ways == null || a.equals(b)) {
            return direct(network.route().metric(), a, b);
        }
        int from = node(ways, a);
        int to = node(ways, b);
        return direct(network.route().metric(), a, ways.nodes().get(from).position())
                + table[from][to]
                + direct(network.route().metric(), b, ways.nodes().get(to).position());
    }

    private int node(CableWays ways, Position position) {
        for (WayAttachment one : ways.attachmentList()) {
            if (position.equals(where(one))) {
                return ways.nodes().stream().map(node -> node.id()).toList().indexOf(one.node());
            }
        }
        int nearest = 0;
        for (int k = 1; k < table.length; k++) {
            RouteMetric metric = network.route().metric();
            if (direct(metric, position, ways.nodes().get(k).position())
                    < direct(metric, position, ways.nodes().get(nearest).position())) {
                nearest = k;
            }
        }
        return nearest;
    }

    private @Nullable Position where(WayAttachment one) {
        if (one.axis() == null && one.place() == null) {
            return network.host().position();
        }
        if (one.place() != null) {
            return network.places().stream()
                    .filter(place -> place.id().equals(one.place()))
                    .findFirst()
                    .orElseThrow()
                    .position();
        }
        return request.axes().stream()
                .filter(axis -> axis.id().equals(one.axis()))
                .findFirst()
                .orElseThrow()
                .position();
    }

    private static double direct(RouteMetric metric, Position a, Position b) {
        double dx = Math.abs(a.x().si() - b.x().si());
        double dy = Math.abs(a.y().si() - b.y().si());
        double dz = Math.abs(a.z().si() - b.z().si());
        return metric == RouteMetric.STRAIGHT ? Math.sqrt(dx * dx + dy * dy + dz * dz) : dx + dy + dz;
    }
}
