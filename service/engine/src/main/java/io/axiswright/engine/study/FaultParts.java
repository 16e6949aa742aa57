package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.conductor.CircuitConductors;
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
    private final Stock stock;
    private final Map<String, SupplyLoad> loads;
    private final Map<String, CircuitConductors> conductors = new HashMap<>();
    private final Map<String, BulkCable> cables = new HashMap<>();

    FaultParts(StudyRequest request, Stock stock, SupplyRequest asked, CircuitConductoring conductoring) {
        this.request = request;
        this.stock = stock;
        this.loads = asked.loads().stream().collect(Collectors.toMap(SupplyLoad::id, Function.identity()));
        conductoring.result().circuits().forEach(c -> conductors.put(c.id(), c));
        for (PowerCable cable : conductoring.cables()) {
            cables.put(cable.circuit(), stock.get(BulkCable.class, cable.item()));
        }
    }

    FaultRequest request(SupplyResult supply) {
        var insulation = Needed.insulation(request.codeBasis(), request.design());
        return new FaultRequest(
                request.codeBasis(),
                request.design().mains(),
                insulation,
                new Temperature(InsulationUnder.celsius(insulation) + ICE_POINT),
                feeder(supply.feeder()),
                supply.circuits().stream().map(this::branch).toList(),
                transformers(supply));
    }

    /** Of just the rating that is needed; a larger one lets more through, in proportion. */
    private List<FaultTransformer> transformers(SupplyResult supply) {
        Double impedance = Needed.installation(request.design()).transformerImpedance();
        return impedance == null
                ? List.of()
                : supply.transformers().stream()
                        .map(need -> new FaultTransformer(
                                "transformer for " + String.join(", ", need.loads()),
                                need.feed(),
                                need.secondary(),
                                need.power(),
                                impedance))
                        .toList();
    }

    private FaultCircuit feeder(Feeder feeder) {
        return circuit(
                "feeder",
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
                cable != null ? cable.size() : sized == null ? null : sized.conductor(),
                cable != null ? cable.size() : sized == null ? null : sized.protectiveConductor(),
                stock.find(ProtectiveDevice.class, device),
                ends);
    }
}
