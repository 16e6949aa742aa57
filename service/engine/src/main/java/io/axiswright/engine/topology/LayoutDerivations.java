package io.axiswright.engine.topology;

import io.axiswright.engine.design.ReservedAxis;
import io.axiswright.engine.design.RouteRule;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the numbers of a layout came about: route lengths, command rates of the trunks, the gap. */
final class LayoutDerivations {

    private final TopologyRequest request;
    private final Routes routes;
    private final List<Derivation> derivations = new ArrayList<>();

    private LayoutDerivations(TopologyRequest request, Routes routes) {
        this.request = request;
        this.routes = routes;
    }

    static List<Derivation> of(
            TopologyRequest request,
            Routes routes,
            Layout layout,
            List<PlacedGateway> gateways,
            Money cost,
            Money bound,
            Ratio gap) {
        var list = new LayoutDerivations(request, routes);
        list.gap(cost, bound, gap);
        list.rates(layout);
        list.routes(gateways);
        return list.derivations;
    }

    private void gap(Money cost, Money bound, Ratio gap) {
        derivations.add(new Derivation(
                "layout",
                "g",
                "(cost − bound) / cost",
                Derivation.inputs("cost", amount(cost), "bound", amount(bound)),
                "derived: relaxation bound against the cost of the layout",
                gap));
    }

    /** The amount alone: both are in the currency of the request. */
    private static Ratio amount(Money money) {
        return new Ratio(money.amount().doubleValue());
    }

    private void rates(Layout layout) {
        for (Layout.Trunk trunk : layout.trunks) {
            var inputs = new LinkedHashMap<String, Quantity>();
            double sum = 0;
            for (Layout.Node node : trunk.chain) {
                for (int index : node.axes) {
                    var axis = request.axes().get(index);
                    inputs.put("f(" + axis.id() + ")", axis.commandRate());
                    sum += axis.commandRate().si();
                }
            }
            if (!inputs.isEmpty()) {
                String port = request.network().host().ports().get(trunk.port).id();
                derivations.add(new Derivation(port, "f", "Σ f(axis)", inputs, Clauses.COUNT, new Frequency(sum)));
            }
        }
    }

    private void routes(List<PlacedGateway> gateways) {
        Map<String, Integer> axes = new HashMap<>();
        for (int axis = request.axes().size() - 1; axis >= 0; axis--) {
            ReservedAxis reserved = request.axes().get(axis).reserved();
            axes.put(reserved == null ? request.axes().get(axis).id() : reserved.id(), axis);
        }
        Map<String, Integer> places = new HashMap<>();
        for (int place = 0; place < request.network().places().size(); place++) {
            places.put(request.network().places().get(place).id(), place);
        }
        Map<String, Integer> stands = new HashMap<>();
        for (PlacedGateway gateway : gateways) {
            int here = places.getOrDefault(gateway.place(), 0);
            stands.put(gateway.id(), here);
            int before = gateway.upstream() == null ? -1 : stands.getOrDefault(gateway.upstream(), -1);
            if (gateway.linkCable() != null) {
                route(gateway.id(), routes.linkWay(before, here), gateway.linkRouteLength());
            }
            for (SpurLink spur : gateway.spurs()) {
                int axis = axes.getOrDefault(spur.axis(), 0);
                route(spur.axis(), routes.spurWay(axis, here), spur.routeLength());
            }
            for (ReservedPorts kept : gateway.reservedList()) {
                int axis = axes.getOrDefault(kept.id(), 0);
                route(kept.id(), routes.spurWay(axis, here), kept.routeLength());
            }
        }
    }

    private void route(String subject, double measured, Length length) {
        RouteRule rule = request.network().route();
        var way = new Length(measured);
        derivations.add(new Derivation(
                subject,
                "L",
                "k·w + 2·s",
                Derivation.inputs("k", new Ratio(rule.factor()), "w", way, "s", rule.slackPerEnd()),
                Clauses.ROUTE,
                length));
    }
}
