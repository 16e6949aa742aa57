package io.axiswright.engine.comparison;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.topology.PlacedGateway;
import io.axiswright.engine.topology.SpurLink;
import io.axiswright.engine.topology.TopologyResult;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What is not as it was in the layout of the control network.
 *
 * @param gateways the gateways; one has changed if it is of another type, or hangs in another place
 * @param movedAxes ids of the axes of both that hang on another gateway, in the order of the second layout
 * @param otherCables how many gateways and axes of both have another cable assembly to what they hang on
 * @param costDifference after minus before of what the layout costs; absent if one of the two has none, or in two currencies
 */
public record NetworkChanges(
        ChangeCounts gateways,
        List<String> movedAxes,
        @Bounds(min = 0) int otherCables,
        @Nullable MoneyDifference costDifference) {

    /** Of two layouts in which what is the same gateway has the same number. */
    static NetworkChanges of(TopologyResult before, TopologyResult after) {
        Map<String, PlacedGateway> first = byId(before);
        Map<String, PlacedGateway> second = byId(after);
        Map<String, String> gateways = gateways(before);
        return new NetworkChanges(
                ChangeCounts.of(first, second, NetworkChanges::same),
                gateways(after).entrySet().stream()
                        .filter(axis -> !gateways.getOrDefault(axis.getKey(), axis.getValue())
                                .equals(axis.getValue()))
                        .map(Map.Entry::getKey)
                        .toList(),
                ChangeCounts.of(cables(before), cables(after), String::equals).changed(),
                Deltas.ofMoney(before.cost(), after.cost()));
    }

    private static Map<String, PlacedGateway> byId(TopologyResult layout) {
        return layout.gateways().stream().collect(Collectors.toMap(PlacedGateway::id, Function.identity()));
    }

    private static boolean same(PlacedGateway one, PlacedGateway other) {
        return one.gatewayType().equals(other.gatewayType())
                && one.place().equals(other.place())
                && one.hostPort().equals(other.hostPort())
                && Objects.equals(one.upstream(), other.upstream());
    }

    /** By axes what they hang on. */
    private static Map<String, String> gateways(TopologyResult layout) {
        Map<String, String> gateways = new LinkedHashMap<>();
        layout.gateways().forEach(gateway -> gateway.spurs().forEach(spur -> gateways.put(spur.axis(), gateway.id())));
        return gateways;
    }

    /** By gateways and axes their cables. */
    private static Map<String, String> cables(TopologyResult layout) {
        Map<String, String> cables = new LinkedHashMap<>();
        for (PlacedGateway gateway : layout.gateways()) {
            cables.put("/" + gateway.id(), String.valueOf(gateway.linkCable()));
            for (SpurLink spur : gateway.spurs()) {
                cables.put(spur.axis(), spur.cable());
            }
        }
        return cables;
    }
}
