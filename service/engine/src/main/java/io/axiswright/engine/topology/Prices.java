package io.axiswright.engine.topology;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a layout costs, to the last decimal. */
final class Prices {

    private Prices() {}

    static BigDecimal of(TopologyRequest request, List<PlacedGateway> gateways) {
        Map<String, BigDecimal> prices = new HashMap<>();
        request.items().forEach(item -> prices.put(item.id(), MoneyScale.price(item)));
        return gateways.stream()
                .flatMap(PlacedGateway::bought)
                .map(item -> prices.getOrDefault(item, BigDecimal.ZERO))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
