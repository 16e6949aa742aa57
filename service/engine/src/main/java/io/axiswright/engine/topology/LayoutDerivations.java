package io.axiswright.engine.topology;

import io.axiswright.engine.design.Position;
import io.axiswright.engine.design.RouteRule;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Money;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How the numbers of a layout came about: route lengths, command rates of the trunks, the gap. */
final class LayoutDerivations {

    private final TopologyRequest request;
    private final List<Derivation> derivations = new ArrayList<>();

    private LayoutDerivations(TopologyRequest request) {
        this.request = request;
    }

    static List<Derivation> of(
            TopologyRequest request, Layout layout, List<PlacedGateway> gateways, Money cost, Money bound, Ratio gap) {
        var list = new LayoutDerivations(request);
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
        var axes = new LinkedHashMap<String, NetworkAxis>();
        request.axes().forEach(axis -> axes.put(axis.id(), axis));
        var places = new LinkedHashMap<String, Position>();
        request.network().places().forEach(place -> places.put(place.id(), place.position()));
        Map<String, Position> stands = new LinkedHashMap<>();
        for (PlacedGateway gateway : gateways) {
            Position here = java.util.Objects.requireNonNull(places.get(gateway.place()));
            stands.put(gateway.id(), here);
            Position before = gateway.upstream() == null
                    ? request.network().host().position()
                    : java.util.Objects.requireNonNull(stands.get(gateway.upstream()));
            if (gateway.linkCable() != null) {
                route(gateway.id(), before, here, gateway.linkRouteLength());
            }
            for (SpurLink spur : gateway.spurs()) {
                var axis = java.util.Objects.requireNonNull(axes.get(spur.axis()));
                route(spur.axis(), axis.position(), here, spur.routeLength());
            }
        }
    }

    private void route(String subject, Position from, Position to, Length length) {
        RouteRule rule = request.network().route();
        Length way = new RouteRule(rule.metric(), 1, new Length(0)).between(from, to);
        derivations.add(new Derivation(
                subject,
                "L",
                "k·w + 2·s",
                Derivation.inputs("k", new Ratio(rule.factor()), "w", way, "s", rule.slackPerEnd()),
                Clauses.ROUTE,
                length));
    }
}
