package io.axiswright.engine.design;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.quantity.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What cable ways must not contradict themselves in: every node is reached, no way is shorter than straight. */
final class WayCheck {

    /** A way shorter than straight by no more is so by rounding, m. */
    private static final double ROUNDING = 1e-6;

    private final Network network;
    private final CableWays ways;
    private final String prefix;
    private final Map<String, Position> nodes = new HashMap<>();
    private final Map<String, Position> axes = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private WayCheck(Design design, Network network, CableWays ways, String prefix) {
        this.network = network;
        this.ways = ways;
        this.prefix = prefix;
        design.axes().forEach(axis -> axes.put(axis.id(), axis.position()));
    }

    /** The faults of cable ways; the prefix is the JSON Pointer to them. */
    static List<Fault> faults(Design design, Network network, CableWays ways, String prefix) {
        var check = new WayCheck(design, network, ways, prefix);
        check.checkNodes();
        check.checkEdges();
        check.checkAttachments();
        if (check.faults.isEmpty()) {
            check.checkReach();
        }
        return check.faults;
    }

    private void checkNodes() {
        for (int k = 0; k < ways.nodes().size(); k++) {
            WayNode node = ways.nodes().get(k);
            if (nodes.putIfAbsent(node.id(), node.position()) != null) {
                fault(
                        "/nodes/" + k + "/id",
                        FaultCode.DUPLICATE_ID,
                        "\"" + node.id() + "\" is the id of another node already.",
                        "an id no other node has");
            }
        }
    }

    private void checkEdges() {
        for (int k = 0; k < ways.edges().size(); k++) {
            WayEdge edge = ways.edges().get(k);
            String pointer = "/edges/" + k;
            Position from = node(edge.from(), pointer + "/from");
            Position to = node(edge.to(), pointer + "/to");
            Length length = edge.length();
            if (from != null && to != null && length != null) {
                double straight = WayGraph.straight(from, to);
                if (length.si() < straight - ROUNDING) {
                    fault(
                            pointer + "/length",
                            FaultCode.INCONSISTENT,
                            "The way is shorter than the straight line between its nodes.",
                            "at least the distance of the nodes");
                }
            }
        }
    }

    private void checkAttachments() {
        Map<Position, String> joined = new HashMap<>();
        for (int k = 0; k < ways.attachmentList().size(); k++) {
            WayAttachment attachment = ways.attachmentList().get(k);
            String pointer = "/attachments/" + k;
            node(attachment.node(), pointer + "/node");
            Position position = CableLengths.attached(attachment, network, axes);
            if (attachment.axis() != null && attachment.place() != null) {
                fault(
                        pointer + "/place",
                        FaultCode.INCONSISTENT,
                        "An axis and a place are two things.",
                        "an attachment for each");
            } else if (position == null) {
                fault(
                        pointer + (attachment.axis() == null ? "/place" : "/axis"),
                        FaultCode.DANGLING_REFERENCE,
                        "There is no such axis or place that has a position.",
                        "the id of a place, or of an axis with a position");
            } else {
                String before = joined.putIfAbsent(position, attachment.node());
                if (before != null && !before.equals(attachment.node())) {
                    fault(
                            pointer + "/node",
                            FaultCode.INCONSISTENT,
                            "What stands in this position is joined to node \"" + before + "\" already.",
                            "one node for each position");
                }
            }
        }
    }

    private void checkReach() {
        var graph = new WayGraph(ways, network.route());
        for (int k = 1; k < ways.nodes().size(); k++) {
            if (Double.isInfinite(graph.way(0, k))) {
                fault(
                        "/nodes/" + k,
                        FaultCode.INCONSISTENT,
                        "No cable way leads from node \""
                                + ways.nodes().getFirst().id() + "\" to node \""
                                + ways.nodes().get(k).id() + "\".",
                        "ways that hang together");
            }
        }
    }

    private @Nullable Position node(String id, String pointer) {
        Position position = nodes.get(id);
        if (position == null) {
            fault(
                    pointer,
                    FaultCode.DANGLING_REFERENCE,
                    "No node of the cable ways has the id \"" + id + "\".",
                    "the id of an element of network.ways.nodes");
        }
        return position;
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(prefix + pointer, code, detail, accepted));
    }
}
