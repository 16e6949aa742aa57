package io.axiswright.engine.topology;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a layout costs, to the last decimal. */
final class Prices {

    private Prices() {}

    static BigDecimal of(TopologyRequest request, List<PlacedGateway> gateways) {
        Map<String, BigDecimal> types = new HashMap<>();
        request.gatewayTypes().forEach(type -> types.put(type.id(), MoneyScale.price(type)));
        Map<String, BigDecimal> cables = new HashMap<>();
        request.cableAssemblies().forEach(cable -> cables.put(cable.id(), MoneyScale.price(cable)));
        var sum = BigDecimal.ZERO;
        for (PlacedGateway gateway : gateways) {
            sum = sum.add(types.getOrDefault(gateway.gatewayType(), BigDecimal.ZERO));
            if (gateway.linkCable() != null) {
                sum = sum.add(cables.getOrDefault(gateway.linkCable(), BigDecimal.ZERO));
            }
            for (SpurLink spur : gateway.spurs()) {
                sum = sum.add(cables.getOrDefault(spur.cable(), BigDecimal.ZERO));
            }
        }
        return sum;
    }
}
