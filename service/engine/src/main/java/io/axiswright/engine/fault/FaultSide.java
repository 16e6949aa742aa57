package io.axiswright.engine.fault;

import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Resistance;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The faults of one side of the distribution: what the mains feed straight, or what a transformer feeds. */
final class FaultSide {

    private final FaultRequest request;
    private final Distribution distribution;
    private final CircuitJudge judge;
    private final List<FaultPoint> points = new ArrayList<>();
    private final List<CircuitFault> circuits = new ArrayList<>();
    private final List<Derivation> derivations = new ArrayList<>();

    FaultSide(FaultRequest request) {
        this.request = request;
        this.distribution = new Distribution(request);
        this.judge = new CircuitJudge(request, distribution);
    }

    Distribution distribution() {
        return distribution;
    }

    CircuitJudge judge() {
        return judge;
    }

    List<FaultPoint> points() {
        return points;
    }

    List<CircuitFault> circuits() {
        return circuits;
    }

    List<Derivation> derivations() {
        return derivations;
    }

    /** Where the side starts. */
    Reach terminals() {
        Path start = request.mains().system() == SupplySystem.THREE_PHASE_THREE_WIRE
                ? new Path(Impedance.NONE, null, Impedance.NONE)
                : Path.START;
        return new Reach(start, start);
    }

    /** The feeder; the panel at its end, if it has conductors. */
    Optional<Reach> feeder(FaultPlace panel) {
        return ends(terminals(), request.feeder(), panel);
    }

    /** The branch circuits, from the panel. */
    void branches(Reach panel) {
        request.branches().forEach(branch -> ends(panel, branch, FaultPlace.LOAD));
    }

    /** A place told of. */
    void add(FaultPoint point) {
        points.add(point);
        derivations.add(new Derivation(
                point.id(),
                "I_k,max",
                "largest of c U_0 / Z, c U / (2 Z), c U_0 / (Z + Z_N), c U_0 / (Z + Z_PE)",
                Derivation.inputs(
                        "Z",
                        new Resistance(Math.hypot(
                                Objects.requireNonNull(point.resistance()).si(),
                                Objects.requireNonNull(point.reactance()).si()))),
                SupplyCases.METHOD,
                point.maximum().largest()));
    }

    /** The ends of a circuit and the circuit itself; the last end that has conductors, if any. */
    private Optional<Reach> ends(Reach origin, FaultCircuit circuit, FaultPlace place) {
        List<Reach> reached = new ArrayList<>();
        for (CircuitEnd end : circuit.ends()) {
            distribution.along(origin, circuit, end.length().si()).ifPresent(reach -> {
                reached.add(reach);
                FaultPoint point = distribution.point(place, end.id(), circuit.id(), reach, circuit.connection());
                add(point);
                judge.end(end, point);
            });
        }
        CircuitFault fault = judge.circuit(circuit, origin, reached);
        circuits.add(fault);
        judge.derivation(fault).ifPresent(derivations::add);
        return reached.stream().reduce((before, last) -> last);
    }
}
