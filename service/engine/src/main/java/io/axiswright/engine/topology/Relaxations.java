package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.StopScope;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Frequency;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Quantity;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Where limits clash only together, which single limit would have to give and by how much at least: each is relaxed alone
 * and the search run again.
 */
final class Relaxations {

    /** Steps by which a counted limit is widened before it is given up. */
    private static final int MOST_STEPS = 3;

    /** Longer than any cable: an axis whose place is fixed does not go elsewhere. */
    private static final Length NEVER = new Length(1e9);

    private final TopologyRequest request;
    private final Routes routes;
    private final LayoutModel model;
    private final LayoutSolver solver;
    private final List<Finding> findings = new ArrayList<>();

    private Relaxations(TopologyRequest request, Routes routes, LayoutModel model, LayoutSolver solver) {
        this.request = request;
        this.routes = routes;
        this.model = model;
        this.solver = solver;
    }

    /** One finding for each limit that, widened alone, lets a layout exist. */
    static List<Finding> of(TopologyRequest request, Routes routes, LayoutModel model, LayoutSolver solver) {
        var relaxations = new Relaxations(request, routes, model, solver);
        relaxations.counts();
        relaxations.separations();
        relaxations.lengths();
        relaxations.rate();
        return relaxations.findings;
    }

    private void counts() {
        counted("host ports", "/design/network/host/ports", model.portRate().length, k -> Relaxed.hostPorts(model, k));
        counted(
                "gateways in one place",
                "/design/network/places",
                Arrays.stream(model.room()).max().orElse(0),
                k -> Relaxed.room(model, k));
        counted(
                "gateways in one trunk",
                request.gatewaysPointer(),
                model.deepestChain(),
                k -> Relaxed.types(model, t -> t.withChainDepth(t.chainDepth() + k)));
        counted(
                "drive ports",
                request.gatewaysPointer(),
                model.mostDrivePorts(),
                k -> Relaxed.types(model, t -> t.withDrivePorts(t.drivePorts() + k)));
        counted(
                "brake outputs",
                request.gatewaysPointer(),
                model.mostBrakeOutputs(),
                k -> Relaxed.types(model, t -> t.withBrakeOutputs(t.brakeOutputs() + k)));
        if (model.zonesMatter() && solvable(Relaxed.types(model, t -> t.withScope(StopScope.NONE)))) {
            clash("stop zones on one stop input", "/design/axes", new Ratio(model.zones()), new Ratio(1));
        }
    }

    private void separations() {
        long never = request.network().separationList().stream()
                .filter(separation -> separation.price() == null)
                .count();
        if (never > 0 && solvable(Relaxed.together(model))) {
            clash("separations of axes", "/design/network/separations", new Ratio(0), new Ratio(never));
        }
    }

    private void counted(String what, String pointer, int now, Function<Integer, LayoutModel> relaxed) {
        for (int step = 1; step <= MOST_STEPS; step++) {
            if (solvable(relaxed.apply(step))) {
                clash(what, pointer, new Ratio(now + step), new Ratio(now));
                return;
            }
        }
    }

    private void lengths() {
        Relaxed.Way spurs = (axis, place) -> routes.allowed(axis, place) ? routes.spur(axis, place) : NEVER;
        Relaxed.Way fromHost = (host, place) -> routes.link(-1, place);
        length(
                "spur cable",
                request.cablesPointer(),
                routes.spurCables.longest(),
                model.axes().size(),
                spurs,
                metres -> Relaxed.links(
                        model, model.host(), model.trunk(), Relaxed.reaching(model.spur(), spurs, metres)));
        length(
                "trunk cable",
                request.cablesPointer(),
                routes.trunkCables.longest(),
                model.places(),
                routes::link,
                metres -> Relaxed.links(
                        model, model.host(), Relaxed.reaching(model.trunk(), routes::link, metres), model.spur()));
        length(
                "host cable",
                request.cablesPointer(),
                routes.hostCables.longest(),
                1,
                fromHost,
                metres -> Relaxed.links(
                        model, Relaxed.reaching(model.host(), fromHost, metres), model.trunk(), model.spur()));
    }

    /** The shortest longest cable that helps, by halving the sorted list of route lengths. */
    private void length(
            String what,
            String pointer,
            Length longest,
            int rows,
            Relaxed.Way way,
            Function<Double, LayoutModel> relaxed) {
        var metres = new java.util.TreeSet<Double>();
        for (int row = 0; row < rows; row++) {
            for (int place = 0; place < model.places(); place++) {
                double route = way.length(row, place).si();
                if (route > longest.si() && route < NEVER.si()) {
                    metres.add(route);
                }
            }
        }
        var lengths = List.copyOf(metres);
        if (lengths.isEmpty() || !solvable(relaxed.apply(lengths.getLast()))) {
            return;
        }
        int low = 0;
        int high = lengths.size() - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (solvable(relaxed.apply(lengths.get(middle)))) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        clash("metres of " + what, pointer, new Length(lengths.get(high)), longest);
    }

    private void rate() {
        if (!model.ratesMatter() || !solvable(Relaxed.rates(model))) {
            return;
        }
        double all = request.axes().stream()
                .mapToDouble(axis -> axis.commandRate().si())
                .sum();
        double fastest = request.network().host().ports().stream()
                .mapToDouble(port -> port.commandRate().si())
                .max()
                .orElse(0);
        clash(
                "commands per second of a host port",
                "/design/network/host/ports",
                new Frequency(all),
                new Frequency(fastest));
    }

    private boolean solvable(LayoutModel relaxed) {
        return solver.solvable(relaxed);
    }

    private void clash(String what, String pointer, Quantity value, Quantity limit) {
        findings.add(FindingCode.TOPOLOGY_LIMITS_CLASH.at(what, pointer, Clauses.SEARCH, value, limit));
    }
}
