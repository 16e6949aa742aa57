package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;

/** Refuses requests that cannot be given a meaning. */
final class RequestCheck {

    private final List<Fault> faults = new ArrayList<>();

    private RequestCheck() {}

    /** Throws {@link InvalidDesign} with every fault found, or returns. */
    static void check(TopologyRequest request) {
        var check = new RequestCheck();
        var network = request.network();
        check.unique("/axes", request.axes(), NetworkAxis::id);
        check.unique("/network/places", network.places(), place -> place.id());
        check.unique("/network/host/ports", network.host().ports(), port -> port.id());
        check.unique("/gatewayTypes", request.gatewayTypes(), Item::id);
        check.unique("/cableAssemblies", request.cableAssemblies(), Item::id);
        check.currency("/gatewayTypes", request.gatewayTypes(), request.currency());
        check.currency("/cableAssemblies", request.cableAssemblies(), request.currency());
        if (!check.faults.isEmpty()) {
            throw new InvalidDesign(check.faults);
        }
    }

    private <T> void unique(String pointer, List<T> things, Function<T, String> id) {
        var seen = new HashSet<String>();
        for (int k = 0; k < things.size(); k++) {
            String name = id.apply(things.get(k));
            if (!seen.add(name)) {
                faults.add(new Fault(
                        pointer + "/" + k + "/id",
                        FaultCode.DUPLICATE_ID,
                        "the id \"" + name + "\" is used twice",
                        "an id of its own"));
            }
        }
    }

    private void currency(String pointer, List<? extends Item> items, String currency) {
        for (int k = 0; k < items.size(); k++) {
            var price = items.get(k).price();
            if (price != null && !price.currency().equals(currency)) {
                faults.add(new Fault(
                        pointer + "/" + k + "/price/currency",
                        FaultCode.INCONSISTENT,
                        "a price in " + price.currency() + " among prices in " + currency,
                        currency));
            }
        }
    }
}
