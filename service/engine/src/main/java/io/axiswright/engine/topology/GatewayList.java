package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.LaidCable;
import io.axiswright.engine.design.HostPort;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Puts a layout of numbers back into the caller's words. */
final class GatewayList {

    private final TopologyRequest request;
    private final Routes routes;
    private final LayoutModel model;
    private final List<PlacedGateway> gateways = new ArrayList<>();

    private GatewayList(TopologyRequest request, Routes routes, LayoutModel model) {
        this.request = request;
        this.model = model;
        this.routes = routes;
    }

    static List<PlacedGateway> of(TopologyRequest request, Routes routes, LayoutModel model, Layout layout) {
        var list = new GatewayList(request, routes, model);
        layout.trunks.forEach(list::add);
        return list.gateways;
    }

    private void add(Trunk trunk) {
        HostPort port = request.network().host().ports().get(trunk.port);
        String upstream = null;
        Node before = null;
        int depth = 0;
        int row = 1;
        for (Node node : trunk.chain) {
            row = model.row(before, node, row);
            LaidCable link = null;
            var route = new Length(0);
            if (row == 1) {
                int from = before == null ? -1 : before.place;
                link = routes.linkCable(from, node.place).orElseThrow();
                route = routes.link(from, node.place);
            }
            PlacedGateway placed = placed(node, port.id(), ++depth, upstream, link, route);
            gateways.add(placed);
            upstream = placed.id();
            before = node;
        }
    }

    private PlacedGateway placed(
            Node node, String port, int depth, @Nullable String upstream, @Nullable LaidCable link, Length route) {
        var type = request.gatewayTypes().get(node.type);
        List<Integer> hung = node.axes.stream()
                .filter(axis -> !request.axes().get(axis).isToCome())
                .toList();
        int brakes = (int) hung.stream()
                .filter(axis -> request.axes().get(axis).holdingBrake())
                .count();
        return new PlacedGateway(
                "G" + (gateways.size() + 1),
                type.id(),
                request.network().places().get(node.place).id(),
                port,
                depth,
                upstream,
                link == null ? null : link.pieces().getFirst().id(),
                route,
                link == null ? route : link.length(),
                link == null ? null : link.extension(),
                hung.stream().map(axis -> spur(axis, node.place)).toList(),
                type.drivePorts() - hung.size(),
                type.brakeOutputs() - brakes,
                hung.size() == node.axes.size() ? null : reserved(node));
    }

    /** The axes to come on a gateway, those of one reservation together. */
    private List<ReservedPorts> reserved(Node node) {
        Map<String, ReservedPorts> kept = new LinkedHashMap<>();
        for (int axis : node.axes) {
            ReservedAxis reserved = request.axes().get(axis).reserved();
            if (reserved != null) {
                SpurLink spur = spur(axis, node.place);
                int before = kept.containsKey(reserved.id())
                        ? kept.get(reserved.id()).ports()
                        : 0;
                kept.put(
                        reserved.id(),
                        new ReservedPorts(
                                reserved.id(),
                                before + 1,
                                spur.cable(),
                                spur.routeLength(),
                                spur.cableLength(),
                                spur.extension()));
            }
        }
        return List.copyOf(kept.values());
    }

    private SpurLink spur(int axis, int place) {
        LaidCable cable = routes.spurCable(axis, place).orElseThrow();
        return new SpurLink(
                request.axes().get(axis).id(),
                cable.pieces().getFirst().id(),
                routes.spur(axis, place),
                cable.length(),
                cable.extension());
    }
}
