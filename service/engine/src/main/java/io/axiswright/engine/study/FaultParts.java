package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.fault.CircuitEnd;
import io.axiswright.engine.fault.FaultCircuit;
import io.axiswright.engine.fault.FaultRequest;
import io.axiswright.engine.fault.FaultTransformer;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import io.axiswright.engine.supply.BranchCircuit;
import io.axiswright.engine.supply.Connection;
import io.axiswright.engine.supply.Feeder;
import io.axiswright.engine.supply.LoadUse;
import io.axiswright.engine.supply.SupplyLoad;
import io.axiswright.engine.supply.SupplyRequest;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.supply.TransformerNeed;
import io.axiswright.engine.supply.TransformerRating;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The AC distribution as the fault study sees it: circuits with the devices and conductors they are built with. */
final class FaultParts {

    private static final double ICE_POINT = 273.15;

    private final StudyRequest request;
    private final Installation installation;
    private final Stock stock;
    private final Map<String, SupplyLoad> loads;
    private final Map<String, String> pointers = new HashMap<>();
    private final Map<String, CircuitConductors> conductors = new HashMap<>();
    private final Map<String, BulkCable> cables = new HashMap<>();

    FaultParts(StudyRequest request, Stock stock, SupplyRequest asked, CircuitConductoring conductoring) {
        this.request = request;
        this.installation = Needed.installation(request.design());
        this.stock = stock;
        this.loads = asked.loads().stream().collect(Collectors.toMap(SupplyLoad::id, Function.identity()));
        conductoring.result().circuits().forEach(c -> conductors.put(c.id(), c));
        for (PowerCable cable : conductoring.cables()) {
            cables.put(cable.circuit(), stock.get(BulkCable.class, cable.item()));
        }
    }

    FaultRequest request(SupplyResult supply) {
        supply.transformers()
                .forEach(t -> pointers.put(
                        t.id(),
                        Objects.requireNonNull(loads.get(t.loads().getFirst())).pointer()));
        var insulation = Needed.insulation(request.codeBasis(), request.design());
        return new FaultRequest(
                request.codeBasis(),
                request.design().mains(),
                insulation,
                new Temperature(InsulationUnder.celsius(insulation) + ICE_POINT),
                feeder(supply.feeder()),
                branches(supply, null),
                transformers(supply));
    }

    private List<FaultCircuit> branches(SupplyResult supply, @Nullable String transformer) {
        return supply.circuits().stream()
                .filter(circuit -> Objects.equals(circuit.transformer(), transformer))
                .map(this::branch)
                .toList();
    }

    /** Where no standard rating serves, of just the power that is asked for. */
    private List<FaultTransformer> transformers(SupplyResult supply) {
        Double impedance = installation.transformerImpedance();
        return impedance == null
                ? List.of()
                : supply.transformers().stream()
                        .map(need -> transformer(need, impedance, supply))
                        .toList();
    }

    private FaultTransformer transformer(TransformerNeed need, double impedance, SupplyResult supply) {
        TransformerRating rating = need.rating();
        Feeder behind = need.feeder();
        return new FaultTransformer(
                need.id(),
                need.feed(),
                need.secondary(),
                rating == null ? need.power() : rating.power(),
                impedance,
                need.earthing(),
                behind == null ? null : behind(need, behind),
                branches(supply, need.id()));
    }

    private FaultCircuit behind(TransformerNeed need, Feeder feeder) {
        String pointer =
                Objects.requireNonNull(loads.get(need.loads().getFirst())).pointer();
        return circuit(
                Feeder.behind(need.id()),
                pointer,
                whole(feeder),
                feeder.neutral(),
                feeder.device(),
                List.of(new CircuitEnd("panel behind " + need.id(), pointer, feeder.length(), null, null)));
    }

    private FaultCircuit feeder(Feeder feeder) {
        return circuit(
                Feeder.ID,
                Feeder.POINTER,
                whole(feeder),
                feeder.neutral(),
                feeder.device(),
                List.of(new CircuitEnd("mains panel", Feeder.POINTER, feeder.length(), null, null)));
    }

    private static Connection whole(Feeder feeder) {
        return switch (feeder.lines().size()) {
            case 1 -> Connection.LINE_TO_NEUTRAL;
            case 2 -> Connection.LINE_TO_LINE;
            default -> Connection.THREE_PHASE;
        };
    }

    private FaultCircuit branch(BranchCircuit circuit) {
        if (circuit.use() == LoadUse.TRANSFORMER) {
            return primary(circuit);
        }
        List<SupplyLoad> fed = circuit.loads().stream()
                .map(id -> Objects.requireNonNull(loads.get(id)))
                .toList();
        return circuit(
                circuit.id(),
                fed.getFirst().pointer(),
                circuit.connection(),
                circuit.connection() == Connection.LINE_TO_NEUTRAL,
                circuit.device(),
                fed.stream().map(FaultParts::end).toList());
    }

    private FaultCircuit primary(BranchCircuit circuit) {
        String transformer = circuit.loads().getFirst();
        String pointer = pointers.getOrDefault(transformer, Feeder.POINTER);
        return circuit(
                circuit.id(),
                pointer,
                circuit.connection(),
                circuit.connection() == Connection.LINE_TO_NEUTRAL,
                circuit.device(),
                List.of(new CircuitEnd(transformer, pointer, circuit.longestRoute(), null, null, false)));
    }

    /** Fans run straight from the line; everything else has a rectifier between. */
    private static CircuitEnd end(SupplyLoad load) {
        return new CircuitEnd(
                load.id(),
                load.pointer(),
                load.routeLength(),
                load.shortCircuitRating(),
                load.use() == LoadUse.VENTILATION ? load.ratedCurrent() : null);
    }

    /** A cable may be thicker than the conductors need be, and then its protective conductor is one of its cores. */
    private FaultCircuit circuit(
            String id,
            String pointer,
            Connection connection,
            boolean neutral,
            @Nullable String device,
            List<CircuitEnd> ends) {
        CircuitConductors sized = conductors.get(id);
        BulkCable cable = cables.get(id);
        return new FaultCircuit(
                id,
                pointer,
                connection,
                neutral,
                id.equals(Feeder.ID) ? installation.ofFeeder() : installation.material(),
                cable != null ? cable.size() : sized == null ? null : sized.conductor(),
                cable != null ? cable.size() : sized == null ? null : sized.protectiveConductor(),
                stock.find(ProtectiveDevice.class, device),
                ends);
    }
}
