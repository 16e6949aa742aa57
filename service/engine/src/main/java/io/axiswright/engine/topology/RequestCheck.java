package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableUse;
import io.axiswright.engine.catalogue.Item;
import io.axiswright.engine.design.KeptLayout;
import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.quantity.Money;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Refuses requests that cannot be given a meaning. */
final class RequestCheck {

    private final List<Fault> faults = new ArrayList<>();

    private RequestCheck() {}

    /** Throws {@link InvalidDesign} with every fault found, or returns. */
    static void check(TopologyRequest request) {
        var check = new RequestCheck();
        var network = request.network();
        var source = request.catalogueSource();
        check.unique(request.present(), NetworkAxis::id, rest -> "/design/axes" + rest);
        check.unique(network.places(), place -> place.id(), rest -> "/design/network/places" + rest);
        check.unique(network.host().ports(), port -> port.id(), rest -> "/design/network/host/ports" + rest);
        check.unique(request.gatewayTypes(), Item::id, rest -> source.pointer("/gateways" + rest));
        check.unique(request.cableAssemblies(), Item::id, rest -> source.pointer("/cableAssemblies" + rest));
        check.currency(request.gatewayTypes(), request.currency(), rest -> source.pointer("/gateways" + rest));
        check.currency(
                request.cableAssemblies(), request.currency(), rest -> source.pointer("/cableAssemblies" + rest));
        KeptLayout keep = network.keep();
        if (keep != null) {
            check.currency(keep.movePrice(), request.currency(), "/design/network/keep/movePrice");
        }
        check.spurCables(request);
        for (int k = 0; k < network.separationList().size(); k++) {
            check.currency(
                    network.separationList().get(k).price(),
                    request.currency(),
                    "/design/network/separations/" + k + "/price");
        }
        if (!check.faults.isEmpty()) {
            throw new InvalidDesign(check.faults);
        }
    }

    /** Axes to come may state which spur cables will do. */
    private void spurCables(TopologyRequest request) {
        List<ReservedAxis> reserved = request.network().reservedList();
        for (int k = 0; k < reserved.size(); k++) {
            List<String> cables = reserved.get(k).spurCables();
            for (int j = 0; cables != null && j < cables.size(); j++) {
                String id = cables.get(j);
                if (request.cableAssemblies().stream()
                        .noneMatch(cable ->
                                cable.use() == CableUse.SPUR && cable.id().equals(id))) {
                    faults.add(new Fault(
                            "/design/network/reserved/" + k + "/spurCables/" + j,
                            FaultCode.DANGLING_REFERENCE,
                            "No spur cable of the catalogue has the id \"" + id + "\".",
                            "the id of a spur cable"));
                }
            }
        }
    }

    private <T> void unique(List<T> things, Function<T, String> id, UnaryOperator<String> pointer) {
        var seen = new HashSet<String>();
        for (int k = 0; k < things.size(); k++) {
            String name = id.apply(things.get(k));
            if (!seen.add(name)) {
                faults.add(new Fault(
                        pointer.apply("/" + k + "/id"),
                        FaultCode.DUPLICATE_ID,
                        "the id \"" + name + "\" is used twice",
                        "an id of its own"));
            }
        }
    }

    private void currency(List<? extends Item> items, String currency, UnaryOperator<String> pointer) {
        for (int k = 0; k < items.size(); k++) {
            currency(items.get(k).price(), currency, pointer.apply("/" + k + "/price"));
        }
    }

    private void currency(@Nullable Money price, String currency, String pointer) {
        if (price != null && !price.currency().equals(currency)) {
            faults.add(new Fault(
                    pointer + "/currency",
                    FaultCode.INCONSISTENT,
                    "a price in " + price.currency() + " among prices in " + currency,
                    currency));
        }
    }
}
