package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableAssembly;
import io.axiswright.engine.catalogue.GatewayType;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

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
        request.items().forEach(item -> items.put(item.id(), item));
        request.axes().forEach(axis -> axes.put(axis.id(), axis));
    }

    static List<Finding> of(TopologyRequest request, List<PlacedGateway> gateways) {
        var remarks = new Remarks(request, gateways);
        remarks.prices();
        remarks.joins();
        remarks.stops();
        remarks.findings.addAll(SharedGateways.findings(request, gateways));
        return remarks.findings;
    }

    private void prices() {
        var uses = new LinkedHashMap<String, Integer>();
        gateways.stream().flatMap(PlacedGateway::bought).forEach(id -> uses.merge(id, 1, Integer::sum));
        int all = uses.values().stream().mapToInt(Integer::intValue).sum();
        uses.forEach((id, count) -> {
            Item item = java.util.Objects.requireNonNull(items.get(id));
            if (item.price() == null) {
                findings.add(FindingCode.TOPOLOGY_PRICE_MISSING.at(
                        id, pointer(item), Clauses.PRICE, new Ratio(count), new Ratio(all)));
            }
        });
    }

    /** Of a coupler to the first cable that names it. */
    private String pointer(Item item) {
        int type = request.gatewayTypes().indexOf(item);
        List<CableAssembly> cables = request.cableAssemblies();
        return type >= 0
                ? request.gatewayPointer(type)
                : request.cablePointer(IntStream.range(0, cables.size())
                        .filter(k -> item.equals(cables.get(k))
                                || item.id().equals(cables.get(k).coupler()))
                        .findFirst()
                        .orElseThrow());
    }

    private void joins() {
        for (PlacedGateway gateway : gateways) {
            if (gateway.linkExtension() != null) {
                joined(
                        "the link of gateway " + gateway.id(),
                        "/design/network",
                        gateway.linkRouteLength(),
                        gateway.linkCableLength());
            }
            for (SpurLink spur : gateway.spurs()) {
                if (spur.extension() != null) {
                    NetworkAxis axis = java.util.Objects.requireNonNull(axes.get(spur.axis()));
                    joined("the spur of " + axis.id(), axis.positionPointer(), spur.routeLength(), spur.cableLength());
                }
            }
        }
    }

    private void joined(String subject, String pointer, Length route, Length together) {
        findings.add(FindingCode.TOPOLOGY_CABLES_JOINED.at(subject, pointer, Clauses.ROUTE, route, together));
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
