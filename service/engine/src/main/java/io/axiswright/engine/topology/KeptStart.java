package io.axiswright.engine.topology;

import io.axiswright.engine.design.KeptGateway;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.topology.Layout.Node;
import io.axiswright.engine.topology.Layout.Trunk;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** A kept layout as the place from which the search sets out. */
final class KeptStart {

    private static final int NOWHERE = -1;

    private final LayoutModel model;
    private final Map<String, Integer> axes;
    private final Map<String, Integer> places;
    private final Map<String, Integer> types;
    private final Map<String, Integer> ports;

    private KeptStart(TopologyRequest request, LayoutModel model) {
        this.model = model;
        this.axes = indices(request.present(), NetworkAxis::id);
        this.places = indices(request.network().places(), place -> place.id());
        this.types = indices(request.gatewayTypes(), type -> type.id());
        this.ports = indices(request.network().host().ports(), port -> port.id());
    }

    /** For every axis the index of the place whose gateway it hangs on in the kept layout; −1 for none that is still there. */
    static int[] places(TopologyRequest request) {
        int[] kept = new int[request.axes().size()];
        Arrays.fill(kept, NOWHERE);
        KeptLayout keep = request.network().keep();
        if (keep != null) {
            Map<String, Integer> axes = indices(request.present(), NetworkAxis::id);
            Map<String, Integer> places = indices(request.network().places(), place -> place.id());
            for (KeptGateway gateway : keep.gateways()) {
                for (String axis : gateway.axes()) {
                    Integer index = axes.get(axis);
                    if (index != null) {
                        kept[index] = places.getOrDefault(gateway.place(), NOWHERE);
                    }
                }
            }
        }
        return kept;
    }

    /** What of the kept layout still stands under the limits of today; axes may be left over. Null if there is none. */
    static @Nullable Layout of(TopologyRequest request, LayoutModel model) {
        KeptLayout keep = request.network().keep();
        return keep == null ? null : new KeptStart(request, model).layout(keep);
    }

    private Layout layout(KeptLayout keep) {
        var layout = new Layout(model.portRate().length);
        List<KeptGateway> byDepth = new ArrayList<>(keep.gateways());
        byDepth.sort(Comparator.comparingInt(KeptGateway::depth));
        for (KeptGateway gateway : byDepth) {
            Integer port = ports.get(gateway.hostPort());
            Integer place = places.get(gateway.place());
            if (port != null && place != null && layout.gatewaysAt(place) < model.room()[place]) {
                Trunk trunk = layout.trunks.get(port);
                if (typesFor(gateway).anyMatch(type -> added(trunk, new Node(place, type)))) {
                    hang(trunk, trunk.chain.getLast(), gateway.axes());
                }
            }
        }
        return layout;
    }

    /** The type it is of; any, where that is no longer in the catalogue. */
    private IntStream typesFor(KeptGateway gateway) {
        Integer type = types.get(gateway.gatewayType());
        return type == null ? IntStream.range(0, model.types().size()) : IntStream.of(type);
    }

    private boolean added(Trunk trunk, Node node) {
        trunk.chain.add(node);
        if (!LayoutRules.hold(model, trunk)) {
            trunk.chain.removeLast();
            return false;
        }
        return true;
    }

    /** Hangs as many of the axes on a gateway as the limits of today allow. */
    private void hang(Trunk trunk, Node node, List<String> names) {
        for (String name : names) {
            Integer axis = axes.get(name);
            if (axis != null) {
                node.axes.add(axis);
                if (!LayoutRules.hold(model, trunk)) {
                    node.axes.removeLast();
                }
            }
        }
    }

    private static <T> Map<String, Integer> indices(List<T> things, Function<T, String> id) {
        Map<String, Integer> indices = new HashMap<>();
        for (int k = 0; k < things.size(); k++) {
            indices.put(id.apply(things.get(k)), k);
        }
        return indices;
    }
}
