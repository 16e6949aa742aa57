package io.axiswright.engine.controlpower;

import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What makes a request meaningless: ids used twice, feeds from nowhere, in circles or from another chain. */
final class RequestFaults {

    private static final int MOST_CHAINS = 64;

    private final Map<String, ControlNode> nodes = new HashMap<>();
    private final List<Fault> faults = new ArrayList<>();

    private RequestFaults() {}

    /**
     * Refuses a request without meaning.
     *
     * @throws InvalidDesign with every fault found
     */
    static void refuse(ControlPowerRequest request) {
        RequestFaults check = new RequestFaults();
        check.ids(request.nodes());
        check.feeds(request.nodes());
        check.ways(request);
        if (!check.faults.isEmpty()) {
            throw new InvalidDesign(check.faults);
        }
    }

    private void ids(List<ControlNode> all) {
        Set<String> axes = new HashSet<>();
        Set<String> chains = new HashSet<>();
        for (int k = 0; k < all.size(); k++) {
            ControlNode node = all.get(k);
            String pointer = "/nodes/" + k;
            chains.add(node.chain());
            if (nodes.putIfAbsent(node.id(), node) != null) {
                fault(pointer + "/id", FaultCode.DUPLICATE_ID, node.id() + " is used twice", "a name of its own");
            }
            for (int j = 0; j < node.loads().size(); j++) {
                String axis = node.loads().get(j).axis();
                if (!axes.add(axis)) {
                    fault(
                            pointer + "/loads/" + j + "/axis",
                            FaultCode.DUPLICATE_ID,
                            axis + " hangs on two spurs",
                            "each axis once");
                }
            }
        }
        if (chains.size() > MOST_CHAINS) {
            fault("/nodes", FaultCode.WRONG_COUNT, chains.size() + " chains", "at most " + MOST_CHAINS + " chains");
        }
    }

    /** Supplies at a further place must be able to reach every gateway there is. */
    private void ways(ControlPowerRequest request) {
        for (int k = 0; k < request.nodes().size(); k++) {
            ControlNode node = request.nodes().get(k);
            for (String place : request.spec().furtherPlaceList()) {
                if (node.wayList().stream().noneMatch(way -> way.place().equals(place))) {
                    fault(
                            "/nodes/" + k + "/otherWays",
                            FaultCode.MISSING,
                            "no way from " + place,
                            "a way for each of spec.furtherPlaces");
                }
            }
        }
    }

    private void feeds(List<ControlNode> all) {
        for (int k = 0; k < all.size(); k++) {
            ControlNode node = all.get(k);
            String pointer = "/nodes/" + k + "/upstream";
            ControlNode upstream = upstream(node);
            if (node.upstream() != null && upstream == null) {
                fault(pointer, FaultCode.DANGLING_REFERENCE, node.upstream() + " is no node", "id of a node");
            } else if (upstream != null && !upstream.chain().equals(node.chain())) {
                fault(
                        pointer,
                        FaultCode.INCONSISTENT,
                        upstream.id() + " is on chain " + upstream.chain() + ", not " + node.chain(),
                        "a node of the same chain");
            } else if (feedsItself(node)) {
                fault(pointer, FaultCode.INCONSISTENT, node.id() + " is fed in a circle", "a way to the supply");
            }
        }
    }

    private boolean feedsItself(ControlNode node) {
        ControlNode above = upstream(node);
        for (int step = 0; above != null && step < nodes.size(); step++) {
            if (above.id().equals(node.id())) {
                return true;
            }
            above = upstream(above);
        }
        return false;
    }

    private @Nullable ControlNode upstream(ControlNode node) {
        return node.upstream() == null ? null : nodes.get(node.upstream());
    }

    private void fault(String pointer, FaultCode code, String detail, String accepted) {
        faults.add(new Fault(pointer, code, detail, accepted));
    }
}
