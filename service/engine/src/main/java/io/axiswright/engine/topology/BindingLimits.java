package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.List;

/** The limits a layout uses up entirely: the first places to look when a cheaper one is wanted. */
final class BindingLimits {

    private final TopologyRequest request;
    private final LayoutModel model;
    private final List<LimitUse> binding = new ArrayList<>();

    private BindingLimits(TopologyRequest request, LayoutModel model) {
        this.request = request;
        this.model = model;
    }

    static List<LimitUse> of(TopologyRequest request, LayoutModel model, Layout layout) {
        var limits = new BindingLimits(request, model);
        long used =
                layout.trunks.stream().filter(trunk -> !trunk.chain.isEmpty()).count();
        limits.count(LimitKind.HOST_PORTS, "host", (int) used, layout.trunks.size());
        int gateway = 0;
        for (Trunk trunk : layout.trunks) {
            if (!trunk.chain.isEmpty()) {
                limits.trunk(trunk);
            }
            for (Node node : trunk.chain) {
                limits.gateway("G" + ++gateway, node);
            }
        }
        for (int place = 0; place < model.places(); place++) {
            limits.count(
                    LimitKind.PLACE_ROOM,
                    request.network().places().get(place).id(),
                    layout.gatewaysAt(place),
                    model.room()[place]);
        }
        return limits.binding;
    }

    private void trunk(Trunk trunk) {
        var port = request.network().host().ports().get(trunk.port);
        var state = TrunkState.of(model, trunk);
        count(LimitKind.CHAIN_DEPTH, port.id(), trunk.chain.size(), state.depth());
        double slowest = request.axes().stream()
                .mapToDouble(axis -> axis.commandRate().si())
                .min()
                .orElse(0);
        double used = trunk.chain.stream()
                .flatMap(node -> node.axes.stream())
                .mapToDouble(axis -> request.axes().get(axis).commandRate().si())
                .sum();
        // Used up once not even the slowest axis could be added.
        if (used + slowest > port.commandRate().si()) {
            binding.add(new LimitUse(LimitKind.COMMAND_RATE, port.id(), new Frequency(used), port.commandRate()));
        }
    }

    private void gateway(String id, Node node) {
        var type = model.types().get(node.type);
        count(LimitKind.DRIVE_PORTS, id, node.axes.size(), type.drivePorts());
        int brakes = (int) node.axes.stream()
                .filter(axis -> model.axes().get(axis).brake())
                .count();
        if (brakes > 0) {
            count(LimitKind.BRAKE_OUTPUTS, id, brakes, type.brakeOutputs());
        }
    }

    private void count(LimitKind kind, String subject, int used, int available) {
        if (used >= available) {
            Quantity there = new Ratio(available);
            binding.add(new LimitUse(kind, subject, new Ratio(used), there));
        }
    }
}
