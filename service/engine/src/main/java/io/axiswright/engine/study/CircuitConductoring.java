package io.axiswright.engine.study;

import io.axiswright.engine.conductor.Circuit;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.conductor.ConductorRequest;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.conductor.ConductorSizing;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.TransformerNeed;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Conductors of feeder and branch circuits, and the power cable bought for each. The feeder is sized first; branch circuits
 * get what it leaves of the voltage drop, because the limit holds from the supply terminals to the load; those behind a
 * transformer what its own fall leaves besides. Transformers stand at the mains panel, so neither what feeds them nor what leads
 * from them to their panel takes cable.
 *
 * @param result conductors of the feeder, of every branch circuit, and behind every transformer
 * @param cables the cable of each circuit that has conductors
 */
record CircuitConductoring(ConductorResult result, List<PowerCable> cables) {

    static CircuitConductoring of(StudyRequest request, Stock stock, SupplyRequest asked, SupplyResult supply) {
        if (supply.circuits().isEmpty()) {
            return new CircuitConductoring(new ConductorResult(List.of(), List.of(), List.of(), List.of()), List.of());
        }
        Needed.insulation(request.codeBasis(), request.design());
        var routing = new CableRouting(request, asked, supply);
        var ends = new TerminalEnds(stock, asked);
        var parts = new CircuitParts(request, stock, routing, ends);
        Circuit feeder = parts.feeder(supply.feeder());
        double used = dropShare(size(request, List.of(feeder)).circuits().getFirst());
        var circuits = new ArrayList<>(List.of(feeder));
        Map<String, TransformerNeed> transformers =
                supply.transformers().stream().collect(Collectors.toMap(TransformerNeed::id, Function.identity()));
        for (BranchCircuit circuit : supply.circuits()) {
            TransformerNeed ahead = circuit.transformer() == null ? null : transformers.get(circuit.transformer());
            Double regulation = ahead == null ? null : ahead.regulation();
            circuits.add(parts.branch(circuit, regulation == null ? used : used + regulation, ahead));
        }
        for (TransformerNeed transformer : supply.transformers()) {
            if (transformer.feeder() != null) {
                circuits.add(parts.secondary(transformer, transformer.feeder()));
            }
        }
        // all in one request, so that what holds for the whole is said once
        return buy(request, asked, supply, routing, ends, inStudy(size(request, circuits), places(asked, supply)));
    }

    private static ConductorResult size(StudyRequest request, List<Circuit> circuits) {
        return new ConductorSizing().size(new ConductorRequest(request.codeBasis(), circuits));
    }

    private static double dropShare(CircuitConductors feeder) {
        Double share = feeder.voltageDropShare();
        return share == null ? 0 : share;
    }

    /** The findings point into the study's request; the danger of the mains was told where the supply was sized. */
    private static ConductorResult inStudy(ConductorResult sized, List<String> places) {
        var circuits = new CircuitPlaces(places);
        List<Finding> findings = sized.findings().stream()
                .filter(f -> f.code() != FindingCode.CONDUCTOR_HAZARDOUS_VOLTAGE)
                .map(circuits::inStudy)
                .toList();
        return new ConductorResult(sized.circuits(), sized.sources(), findings, sized.derivations());
    }

    /** What each circuit follows from: the feeder from the mains, a branch from its first load. */
    private static List<String> places(SupplyRequest asked, SupplyResult supply) {
        Map<String, String> ofLoads = asked.loads().stream().collect(Collectors.toMap(l -> l.id(), l -> l.pointer()));
        var places = new ArrayList<>(List.of(Feeder.POINTER));
        supply.circuits().forEach(c -> places.add(ofLoads.getOrDefault(c.loads().getFirst(), Feeder.POINTER)));
        supply.transformers().stream()
                .filter(t -> t.feeder() != null)
                .forEach(t -> places.add(ofLoads.getOrDefault(t.loads().getFirst(), Feeder.POINTER)));
        return places;
    }

    private static CircuitConductoring buy(
            StudyRequest request,
            SupplyRequest asked,
            SupplyResult supply,
            CableRouting routing,
            TerminalEnds ends,
            ConductorResult sized) {
        Map<String, BranchCircuit> circuits =
                supply.circuits().stream().collect(Collectors.toMap(BranchCircuit::id, Function.identity()));
        Map<String, Piece> runs = asked.loads().stream()
                .collect(Collectors.toMap(
                        l -> l.id(), l -> new Piece(l.id(), l.routeLength().si(), l.pointer())));
        var choice = new PowerCableChoice(request);
        List<PowerCable> cables = new ArrayList<>();
        List<Finding> misfits = new ArrayList<>();
        for (CircuitConductors conductors : sized.circuits()) {
            BranchCircuit branch = circuits.get(conductors.id());
            boolean feeder = conductors.id().equals(Feeder.ID);
            if (!feeder && branch == null) {
                continue; // between a transformer and its panel
            }
            int cores = branch == null ? supply.feeder().conductors() : branch.conductors();
            List<Piece> pieces = branch == null
                    ? pieces(Stream.of(
                            new Piece("feeder", supply.feeder().length().si(), Feeder.POINTER)))
                    : pieces(branch.loads().stream().map(runs::get).filter(Objects::nonNull));
            PowerCable cable =
                    pieces.isEmpty() ? null : choice.cable(conductors, cores, pieces, routing.moving(conductors.id()));
            if (cable != null) {
                cables.add(cable);
            }
            misfits.addAll(
                    branch == null
                            ? ends.findings(conductors, cable, supply.feeder().device(), List.of(), Feeder.POINTER)
                            : ends.findings(conductors, cable, branch.device(), branch.loads(), pointer(branch, runs)));
        }
        List<Finding> findings = new ArrayList<>(sized.findings());
        findings.addAll(misfits);
        findings.addAll(choice.findings());
        return new CircuitConductoring(
                new ConductorResult(sized.circuits(), sized.sources(), findings, sized.derivations()),
                List.copyOf(cables));
    }

    private static String pointer(BranchCircuit branch, Map<String, Piece> runs) {
        Piece first = runs.get(branch.loads().getFirst());
        return first == null ? Feeder.POINTER : first.pointer();
    }

    /** What stands at the panel itself needs no cable. */
    private static List<Piece> pieces(Stream<Piece> runs) {
        return runs.filter(run -> run.length() > 0).toList();
    }

    /**
     * The power cable of a circuit.
     *
     * @param circuit id of the circuit
     * @param item catalogue id of the cable
     * @param pieces what it is cut into: every load is run from the panel by itself
     * @param moving whether it is flexed in service
     */
    record PowerCable(String circuit, String item, List<Piece> pieces, boolean moving) {

        /** Metres of all pieces. */
        double length() {
            return pieces.stream().mapToDouble(Piece::length).sum();
        }
    }

    /**
     * One length of power cable.
     *
     * @param load id of the load it runs to; "feeder" for the feeder
     * @param length metres needed
     * @param pointer JSON Pointer to what it follows from
     */
    record Piece(String load, double length, String pointer) {}
}
