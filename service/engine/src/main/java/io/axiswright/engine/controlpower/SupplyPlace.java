package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A place where control supplies may stand, with the chains as they are fed from there. Supplies of one voltage and one fault
 * current share what is planned.
 */
final class SupplyPlace {

    private final String id;
    private final List<ChainNetwork> networks;
    private final FeedPoints feeds;
    private final Map<List<Object>, List<ChainPlan>> plans = new HashMap<>();

    private SupplyPlace(String id, List<ChainNetwork> networks, FeedPoints feeds) {
        this.id = id;
        this.networks = networks;
        this.feeds = feeds;
    }

    /** Every place of a request, the main one first. */
    static List<SupplyPlace> all(ControlPowerRequest request, CablePicker cables) {
        Temperature conductor = Conductors.temperature(request.site());
        var main = new SupplyPlace(
                request.spec().place(), networks(request.nodes(), conductor), new FeedPoints(cables, conductor));
        return Stream.concat(
                        Stream.of(main),
                        request.spec().furtherPlaceList().stream()
                                .map(place -> new SupplyPlace(
                                        place,
                                        networks(
                                                request.nodes().stream()
                                                        .map(node -> node.fedFrom(place))
                                                        .toList(),
                                                conductor),
                                        new FeedPoints(cables, conductor))))
                .toList();
    }

    /** One network a chain, in the order in which chains first appear. */
    private static List<ChainNetwork> networks(List<ControlNode> nodes, Temperature conductor) {
        Map<String, List<ControlNode>> chains = new LinkedHashMap<>();
        for (ControlNode node : nodes) {
            chains.computeIfAbsent(node.chain(), name -> new ArrayList<>()).add(node);
        }
        return chains.entrySet().stream()
                .map(chain -> new ChainNetwork(chain.getKey(), chain.getValue(), conductor))
                .toList();
    }

    String id() {
        return id;
    }

    List<ChainNetwork> networks() {
        return networks;
    }

    /** A chain fed from here, planned once for each kind of supply. */
    List<ChainPlan> plan(int network, SourceVoltages source, FarEnd farEnd) {
        return plans.computeIfAbsent(
                List.of(network, source, farEnd.source()), key -> feeds.plan(networks.get(network), source, farEnd));
    }
}
