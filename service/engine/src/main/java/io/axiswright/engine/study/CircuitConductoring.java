package io.axiswright.engine.study;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.conductor.ConductorSizing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Conductors of feeder and branch circuits, and the power cable bought for each. The feeder is sized first; branch circuits
 * get what it leaves of the voltage drop, because the limit holds from the supply terminals to the load.
 *
 * @param result conductors of the feeder and of every branch circuit
 * @param cables the cable of each circuit that has conductors
 */
record CircuitConductoring(ConductorResult result, List<PowerCable> cables) {

    static CircuitConductoring of(StudyRequest request, Stock stock, SupplyRequest asked, SupplyResult supply) {
        if (supply.circuits().isEmpty()) {
            return new CircuitConductoring(new ConductorResult(List.of(), List.of(), List.of(), List.of()), List.of());
        }
        var parts = new CircuitParts(request, stock);
        ConductorResult feeder = size(request, List.of(parts.feeder(supply.feeder())));
        double used = dropShare(feeder.circuits().getFirst());
        List<Circuit> branches =
                supply.circuits().stream().map(c -> parts.branch(c, used)).toList();
        ConductorResult branch = size(request, branches);
        return buy(request, asked, supply, join(feeder, branch, places(asked, supply)));
    }

    private static ConductorResult size(StudyRequest request, List<Circuit> circuits) {
        return new ConductorSizing().size(new ConductorRequest(request.codeBasis(), circuits));
    }

    private static double dropShare(CircuitConductors feeder) {
        Double share = feeder.voltageDropShare();
        return share == null ? 0 : share;
    }

    private static ConductorResult join(ConductorResult feeder, ConductorResult branches, List<String> places) {
        List<CircuitConductors> circuits = new ArrayList<>(feeder.circuits());
        circuits.addAll(branches.circuits());
        List<Finding> findings = new ArrayList<>();
        var ofFeeder = new CircuitPlaces(List.of(Feeder.POINTER));
        var ofBranches = new CircuitPlaces(places);
        feeder.findings().forEach(f -> findings.add(ofFeeder.inStudy(f)));
        branches.findings().forEach(f -> findings.add(ofBranches.inStudy(f)));
        List<Derivation> derivations = new ArrayList<>(feeder.derivations());
        derivations.addAll(branches.derivations());
        Set<Source> sources = new LinkedHashSet<>(feeder.sources());
        sources.addAll(branches.sources());
        return new ConductorResult(circuits, List.copyOf(sources), findings, derivations);
    }

    /** What each circuit of the supply follows from: its first load. */
    private static List<String> places(SupplyRequest asked, SupplyResult supply) {
        Map<String, String> ofLoads = asked.loads().stream().collect(Collectors.toMap(l -> l.id(), l -> l.pointer()));
        return supply.circuits().stream()
                .map(c -> ofLoads.getOrDefault(c.loads().getFirst(), Feeder.POINTER))
                .toList();
    }

    private static CircuitConductoring buy(
            StudyRequest request, SupplyRequest asked, SupplyResult supply, ConductorResult sized) {
        Map<String, BranchCircuit> circuits =
                supply.circuits().stream().collect(Collectors.toMap(BranchCircuit::id, Function.identity()));
        Map<String, Double> routes = asked.loads().stream()
                .collect(Collectors.toMap(l -> l.id(), l -> l.routeLength().si()));
        var choice = new PowerCableChoice(request);
        List<PowerCable> cables = new ArrayList<>();
        for (CircuitConductors conductors : sized.circuits()) {
            BranchCircuit branch = circuits.get(conductors.id());
            int cores = branch == null ? supply.feeder().conductors() : branch.conductors();
            double length = branch == null
                    ? supply.feeder().length().si()
                    : branch.loads().stream().mapToDouble(routes::get).sum();
            // what stands at the panel itself needs no cable
            PowerCable cable = length > 0 ? choice.cable(conductors, cores, length) : null;
            if (cable != null) {
                cables.add(cable);
            }
        }
        List<Finding> findings = new ArrayList<>(sized.findings());
        findings.addAll(choice.findings());
        return new CircuitConductoring(
                new ConductorResult(sized.circuits(), sized.sources(), findings, sized.derivations()),
                List.copyOf(cables));
    }

    /**
     * The power cable of a circuit.
     *
     * @param circuit id of the circuit
     * @param item catalogue id of the cable
     * @param length metres needed: every load is run from the panel by itself
     */
    record PowerCable(String circuit, String item, double length) {}
}
