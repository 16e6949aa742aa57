package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Remarks on a layout that can be built: items without a price, and what its stop inputs do and do not reach. */
final class Remarks {

    private final TopologyRequest request;
    private final List<PlacedGateway> gateways;
    private final Map<String, Item> items = new LinkedHashMap<>();
    private final Map<String, NetworkAxis> axes = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private Remarks(TopologyRequest request, List<PlacedGateway> gateways) {
        this.request = request;
        this.gateways = gateways;
        request.gatewayTypes().forEach(type -> items.put(type.id(), type));
        request.cableAssemblies().forEach(cable -> items.put(cable.id(), cable));
        request.axes().forEach(axis -> axes.put(axis.id(), axis));
    }

    static List<Finding> of(TopologyRequest request, List<PlacedGateway> gateways) {
        var remarks = new Remarks(request, gateways);
        remarks.prices();
        remarks.stops();
        remarks.findings.addAll(SharedGateways.findings(request, gateways));
        return remarks.findings;
    }

    private void prices() {
        var uses = new LinkedHashMap<String, Integer>();
        for (PlacedGateway gateway : gateways) {
            uses.merge(gateway.gatewayType(), 1, Integer::sum);
            if (gateway.linkCable() != null) {
                uses.merge(gateway.linkCable(), 1, Integer::sum);
            }
            gateway.spurs().forEach(spur -> uses.merge(spur.cable(), 1, Integer::sum));
        }
        int all = uses.values().stream().mapToInt(Integer::intValue).sum();
        uses.forEach((id, count) -> {
            Item item = java.util.Objects.requireNonNull(items.get(id));
            if (item.price() == null) {
                findings.add(FindingCode.TOPOLOGY_PRICE_MISSING.at(
                        id, pointer(item), Clauses.PRICE, new Ratio(count), new Ratio(all)));
            }
        });
    }

    private String pointer(Item item) {
        int type = request.gatewayTypes().indexOf(item);
        return type >= 0
                ? request.gatewayPointer(type)
                : request.cablePointer(request.cableAssemblies().indexOf(item));
    }

    private void stops() {
        Set<String> ports = new LinkedHashSet<>();
        gateways.forEach(gateway -> ports.add(gateway.hostPort()));
        for (String port : ports) {
            List<PlacedGateway> trunk = gateways.stream()
                    .filter(gateway -> gateway.hostPort().equals(port))
                    .toList();
            boolean whole = trunk.stream().anyMatch(gateway -> scope(gateway) == StopScope.TRUNK);
            if (whole) {
                stopInput(trunk);
            } else {
                trunk.forEach(this::ownStopInput);
            }
        }
    }

    private void ownStopInput(PlacedGateway gateway) {
        if (scope(gateway) == StopScope.GATEWAY) {
            stopInput(List.of(gateway));
            return;
        }
        var zoned = axesOn(List.of(gateway)).stream()
                .filter(axis -> axis.stopZone() != null)
                .toList();
        if (!zoned.isEmpty()) {
            findings.add(FindingCode.TOPOLOGY_NO_STOP_INPUT.at(
                    gateway.id(),
                    zoned.getFirst().pointer() + "/stopZone",
                    Clauses.STOP,
                    new Ratio(zoned.size()),
                    null));
        }
    }

    /** Axes without a stop zone that one stop input brings to rest along with a zone's axes. */
    private void stopInput(List<PlacedGateway> reach) {
        List<NetworkAxis> stopped = axesOn(reach);
        if (stopped.stream().allMatch(axis -> axis.stopZone() == null)) {
            return;
        }
        for (NetworkAxis axis : stopped) {
            if (axis.stopZone() == null) {
                findings.add(FindingCode.TOPOLOGY_STOPS_ALONG.at(axis.id(), axis.pointer(), Clauses.STOP, null, null));
            }
        }
    }

    private List<NetworkAxis> axesOn(List<PlacedGateway> reach) {
        return reach.stream()
                .flatMap(gateway -> gateway.spurs().stream())
                .map(spur -> java.util.Objects.requireNonNull(axes.get(spur.axis())))
                .toList();
    }

    private StopScope scope(PlacedGateway gateway) {
        return items.get(gateway.gatewayType()) instanceof GatewayType type ? type.stopScope() : StopScope.NONE;
    }
}
