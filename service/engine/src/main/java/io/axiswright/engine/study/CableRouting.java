package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.containment.ContainmentRequest;
import io.axiswright.engine.containment.RoutedCable;
import io.axiswright.engine.containment.RoutedStretch;
import io.axiswright.engine.design.CableRoute;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Trunking;
import io.axiswright.engine.standard.ContainmentFill;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Which power cables run along which of the stated routes, and so what runs together. Every load has a cable of its own from the
 * mains panel, which counts as a loaded circuit of its own even beside another of the same branch circuit: never too few.
 */
final class CableRouting {

    /** So many conductors in a metal wireway need no adjustment (NFPA 70 376.22(B)). */
    private static final int FREE_IN_METAL_TRUNKING = 30;

    /** One load's cable on a route. */
    private record Run(String load, String circuit, int loadedConductors) {}

    private final CodeBasis basis;
    private final List<CableRoute> routes;
    private final Map<String, List<Run>> runs = new HashMap<>();

    CableRouting(StudyRequest request, SupplyRequest asked, SupplyResult supply) {
        this.basis = request.codeBasis();
        this.routes = Needed.installation(request.design()).routes();
        Map<String, SupplyLoad> loads =
                asked.loads().stream().collect(Collectors.toMap(SupplyLoad::id, Function.identity()));
        for (CableRoute route : routes) {
            List<Run> along = new ArrayList<>();
            if (route.feeder()) {
                along.add(new Run("feeder", "feeder", FeederNeutral.loadedConductors(supply.feeder())));
            }
            for (BranchCircuit circuit : supply.circuits()) {
                int loaded = circuit.connection() == Connection.THREE_PHASE ? 3 : 2;
                circuit.loads().stream()
                        .filter(load -> takes(route, loads.get(load)))
                        .forEach(load -> along.add(new Run(load, circuit.id(), loaded)));
            }
            runs.put(route.id(), along);
        }
    }

    /** What stands at the panel itself has no cable. */
    private static boolean takes(CableRoute route, @Nullable SupplyLoad load) {
        if (load == null || load.routeLength().si() == 0) {
            return false;
        }
        return load.use() == LoadUse.CONTROL_SUPPLY
                ? route.controlSupplies()
                : route.axes().stream()
                        .anyMatch(axis -> load.id().equals(axis) || load.id().equals(SupplyParts.fan(axis)));
    }

    /** Loaded circuits together on the worst route of a circuit; what is stated for the whole where it is on none. */
    int groupedCircuits(String circuit, int stated) {
        return routesOf(circuit).mapToInt(List::size).max().orElse(stated);
    }

    /** Conductors together that carry current, on the worst route of a circuit; nothing where it is on none. */
    @Nullable
    Integer conductorsTogether(String circuit) {
        List<Integer> counts = new ArrayList<>();
        for (CableRoute route : routes) {
            List<Run> along = runs.getOrDefault(route.id(), List.of());
            along.stream()
                    .filter(run -> run.circuit().equals(circuit))
                    .findFirst()
                    .ifPresent(own -> counts.add(counted(
                            route,
                            own,
                            along.stream().mapToInt(Run::loadedConductors).sum())));
        }
        return counts.stream().max(Integer::compare).orElse(null);
    }

    /** Those of the cable alone where NFPA 70 asks for no adjustment. */
    private static int counted(CableRoute route, Run own, int all) {
        boolean free = ContainmentFill.isShort(route.length())
                || route.containment() instanceof Trunking trunking
                        && trunking.metal()
                        && all <= FREE_IN_METAL_TRUNKING;
        return free ? own.loadedConductors() : all;
    }

    /** Whether a cable of a circuit is flexed along one of its routes. */
    boolean moving(String circuit) {
        return routes.stream()
                .filter(CableRoute::moving)
                .flatMap(route -> runs.getOrDefault(route.id(), List.of()).stream())
                .anyMatch(run -> run.circuit().equals(circuit));
    }

    private Stream<List<Run>> routesOf(String circuit) {
        return runs.values().stream()
                .filter(along -> along.stream().anyMatch(run -> run.circuit().equals(circuit)));
    }

    /** The routes with the cables bought for them. */
    ContainmentRequest request(List<PowerCable> bought, Stock stock) {
        Map<String, BulkCable> cables = bought.stream()
                .collect(Collectors.toMap(PowerCable::circuit, cable -> stock.get(BulkCable.class, cable.item())));
        List<RoutedStretch> stretches = new ArrayList<>();
        for (int k = 0; k < routes.size(); k++) {
            List<RoutedCable> known = new ArrayList<>();
            List<String> unknown = new ArrayList<>();
            for (Run run : runs.getOrDefault(routes.get(k).id(), List.of())) {
                BulkCable cable = cables.get(run.circuit());
                if (cable == null) {
                    unknown.add(run.load());
                } else {
                    known.add(new RoutedCable(
                            run.load(),
                            run.circuit(),
                            cable.id(),
                            cable.outerDiameter(),
                            cable.flexible(),
                            run.loadedConductors()));
                }
            }
            stretches.add(new RoutedStretch(
                    "/design/installation/cableRoutes/" + k, routes.get(k), List.copyOf(known), List.copyOf(unknown)));
        }
        return new ContainmentRequest(basis, stretches);
    }
}
