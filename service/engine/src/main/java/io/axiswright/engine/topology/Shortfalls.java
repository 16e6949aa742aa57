package io.axiswright.engine.topology;

import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/** Limits that no layout can meet, found by counting and measuring alone, each with the least that would do. */
final class Shortfalls {

    private final TopologyRequest request;
    private final Routes routes;
    private final LayoutModel model;
    private final List<Finding> findings = new ArrayList<>();

    private Shortfalls(TopologyRequest request, Routes routes, LayoutModel model) {
        this.request = request;
        this.routes = routes;
        this.model = model;
    }

    static List<Finding> of(TopologyRequest request, Routes routes, LayoutModel model) {
        var shortfalls = new Shortfalls(request, routes, model);
        if (model.types().isEmpty()) {
            shortfalls.count(
                    FindingCode.TOPOLOGY_PORTS_SHORT,
                    request.gatewaysPointer(),
                    model.axes().size(),
                    0);
            return shortfalls.findings;
        }
        shortfalls.lengths();
        shortfalls.counts();
        shortfalls.separations();
        shortfalls.rates();
        return shortfalls.findings;
    }

    /** Indices of the axes that no chain of links reaches, whatever the others do. */
    static BitSet outOfReach(LayoutModel model) {
        boolean[] linked = linked(model, Hops.fewest(model));
        var out = new BitSet();
        for (int axis = 0; axis < model.axes().size(); axis++) {
            int index = axis;
            out.set(
                    axis,
                    IntStream.range(0, model.places())
                            .noneMatch(place -> linked[place] && model.spur().reaches(index, place)));
        }
        return out;
    }

    private static boolean[] linked(LayoutModel model, int[] hops) {
        var linked = new boolean[hops.length];
        for (int place = 0; place < hops.length; place++) {
            linked[place] = hops[place] <= model.deepestChain();
        }
        return linked;
    }

    private void lengths() {
        int[] hops = Hops.fewest(model);
        boolean[] linked = linked(model, hops);
        List<Integer> places = IntStream.range(0, model.places()).boxed().toList();
        if (places.stream().noneMatch(place -> model.host().reaches(0, place))) {
            double nearest = places.stream()
                    .mapToDouble(place -> routes.link(-1, place).si())
                    .min()
                    .orElse(0);
            findings.add(FindingCode.TOPOLOGY_HOST_LINK_TOO_LONG.at(
                    "the host",
                    "/design/network/host/position",
                    Clauses.ROUTE,
                    new Length(nearest),
                    routes.hostCables.longest()));
        }
        for (int axis = 0; axis < model.axes().size(); axis++) {
            length(axis, places, linked, hops);
        }
    }

    private void length(int axis, List<Integer> everywhere, boolean[] linked, int[] hops) {
        int index = axis;
        NetworkAxis named = request.axes().get(axis);
        List<Integer> near = everywhere.stream()
                .filter(place -> model.spur().reaches(index, place))
                .toList();
        String pointer = named.positionPointer();
        if (near.isEmpty()) {
            double nearest = everywhere.stream()
                    .filter(place -> routes.allowed(index, place))
                    .mapToDouble(place -> routes.spur(index, place).si())
                    .min()
                    .orElse(0);
            findings.add(FindingCode.TOPOLOGY_SPUR_TOO_LONG.at(
                    named.id(),
                    pointer,
                    Clauses.ROUTE,
                    new Length(nearest),
                    routes.spurCables(axis).longest()));
        } else if (near.stream().noneMatch(place -> linked[place])) {
            int depth = near.stream().mapToInt(place -> hops[place]).min().orElse(Integer.MAX_VALUE);
            if (depth < Integer.MAX_VALUE) {
                findings.add(FindingCode.TOPOLOGY_TRUNK_TOO_DEEP.at(
                        named.id(), pointer, Clauses.COUNT, new Ratio(depth), new Ratio(model.deepestChain())));
                return;
            }
            // The shortest hop that would bring one of its places into the network.
            double hop = near.stream()
                    .mapToDouble(place -> everywhere.stream()
                            .filter(from -> linked[from])
                            .mapToDouble(from -> routes.link(from, place).si())
                            .min()
                            .orElse(routes.link(-1, place).si()))
                    .min()
                    .orElse(0);
            findings.add(FindingCode.TOPOLOGY_TRUNK_TOO_LONG.at(
                    named.id(), pointer, Clauses.ROUTE, new Length(hop), routes.trunkCables.longest()));
        }
    }

    private void counts() {
        int axes = model.axes().size();
        count(
                FindingCode.TOPOLOGY_PORTS_SHORT,
                request.gatewaysPointer(),
                axes,
                model.mostGateways() * model.mostDrivePorts());
        count(
                FindingCode.TOPOLOGY_BRAKE_OUTPUTS_SHORT,
                request.gatewaysPointer(),
                model.brakes(),
                model.mostGateways() * model.mostBrakeOutputs());
        if (findings.stream().anyMatch(finding -> finding.code() == FindingCode.TOPOLOGY_PORTS_SHORT)) {
            return;
        }
        int zoneGateways = GatewayCounts.fewestGatewaysByZone(model);
        count(FindingCode.TOPOLOGY_ZONES_NEED_GATEWAYS, "/design/network/places", zoneGateways, model.mostGateways());
        if (model.everyTrunkInOneZone()) {
            count(
                    FindingCode.TOPOLOGY_ZONES_NEED_TRUNKS,
                    "/design/network/host/ports",
                    GatewayCounts.fewestTrunksByZone(model),
                    model.portRate().length);
        }
    }

    private void separations() {
        for (int group = 0; group < model.separations().count(); group++) {
            int needed = model.separations().members(group).length;
            if (model.separations().never(group) && needed > model.mostGateways()) {
                findings.add(FindingCode.TOPOLOGY_SEPARATION_NEEDS_GATEWAYS.at(
                        request.network().separationList().get(group).id(),
                        "/design/network/separations/" + group,
                        Clauses.COUNT,
                        new Ratio(needed),
                        new Ratio(model.mostGateways())));
            }
        }
    }

    private void count(FindingCode code, String pointer, int needed, int available) {
        if (needed > available) {
            findings.add(code.at("the network", pointer, Clauses.COUNT, new Ratio(needed), new Ratio(available)));
        }
    }

    private void rates() {
        double fastest = request.network().host().ports().stream()
                .mapToDouble(port -> port.commandRate().si())
                .max()
                .orElse(0);
        for (int axis = 0; axis < model.axes().size(); axis++) {
            if (model.axes().get(axis).rate() > model.fastestPort()) {
                NetworkAxis named = request.axes().get(axis);
                rate(named.id(), named.pointer() + "/commandRate", named.commandRate(), fastest);
            }
        }
        double all = request.network().host().ports().stream()
                .mapToDouble(port -> port.commandRate().si())
                .sum();
        double asked = request.axes().stream()
                .mapToDouble(axis -> axis.commandRate().si())
                .sum();
        // Rates that only fail to share out among the ports are left to the search.
        if (asked > all && model.totalRate() > Arrays.stream(model.portRate()).sum()) {
            rate("all axes together", "/design/network/host/ports", new Frequency(asked), all);
        }
    }

    private void rate(String subject, String pointer, Frequency asked, double available) {
        findings.add(FindingCode.TOPOLOGY_COMMAND_RATE_SHORT.at(
                subject, pointer, Clauses.COUNT, asked, new Frequency(available)));
    }
}
