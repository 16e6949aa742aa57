package io.axiswright.engine.topology;

import io.axiswright.engine.design.Separation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Ratio;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Where axes share a gateway against a priced wish, and what that counts, to the last decimal. */
final class SharedGateways {

    private SharedGateways() {}

    static BigDecimal price(TopologyRequest request, List<PlacedGateway> gateways) {
        var sum = BigDecimal.ZERO;
        for (Separation separation : request.network().separationList()) {
            if (separation.price() != null) {
                var shared = BigDecimal.valueOf(shared(separation, gateways));
                sum = sum.add(separation.price().amount().multiply(shared));
            }
        }
        return sum;
    }

    static List<Finding> findings(TopologyRequest request, List<PlacedGateway> gateways) {
        List<Separation> all = request.network().separationList();
        List<Finding> findings = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            long shared = shared(all.get(k), gateways);
            if (shared > 0) {
                findings.add(FindingCode.TOPOLOGY_SEPARATION_UNMET.at(
                        all.get(k).id(),
                        "/design/network/separations/" + k,
                        Clauses.COUNT,
                        new Ratio(shared),
                        new Ratio(0)));
            }
        }
        return findings;
    }

    /** How many axes of a separation hang with another of it, the first on each gateway not counted. */
    private static long shared(Separation separation, List<PlacedGateway> gateways) {
        long shared = 0;
        for (PlacedGateway gateway : gateways) {
            long here = gateway.spurs().stream()
                            .filter(spur -> separation.axes().contains(spur.axis()))
                            .count()
                    + gateway.reservedList().stream()
                            .filter(kept -> separation.axes().contains(kept.id()))
                            .mapToInt(ReservedPorts::ports)
                            .sum();
            shared += Math.max(0, here - 1);
        }
        return shared;
    }
}
