package io.axiswright.engine.fault;

import io.axiswright.engine.design.SupplySystem;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.standard.Source;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Works out what currents faults draw on the AC distribution, and judges devices, loads and conductors by them. Nothing but
 * the supply feeds a fault: drives behind rectifiers cannot feed back.
 */
public final class FaultStudy {

    /** Studies the faults of a distribution. */
    public FaultResult study(FaultRequest request) {
        return new Run(request).result();
    }

    /** One study. */
    private static final class Run {

        private final FaultRequest request;
        private final Distribution distribution;
        private final CircuitJudge judge;
        private final MachineRating rating;
        private final List<FaultPoint> points = new ArrayList<>();
        private final List<CircuitFault> circuits = new ArrayList<>();
        private final List<Derivation> derivations = new ArrayList<>();

        Run(FaultRequest request) {
            this.request = request;
            this.distribution = new Distribution(request);
            this.judge = new CircuitJudge(request, distribution);
            this.rating = new MachineRating(request);
        }

        FaultResult result() {
            derivations.addAll(distribution.derivations());
            FaultCircuit feeder = request.feeder();
            Path start = request.mains().system() == SupplySystem.THREE_PHASE_THREE_WIRE
                    ? new Path(Impedance.NONE, null, Impedance.NONE)
                    : Path.START;
            var terminals = new Reach(start, start);
            add(distribution.point(
                    FaultPlace.SUPPLY_TERMINALS, "supply terminals", null, terminals, feeder.connection()));
            Optional<Reach> panel = ends(terminals, feeder, FaultPlace.MAINS_PANEL);
            panel.ifPresent(at -> {
                request.transformers().forEach(transformer -> secondary(transformer, at));
                request.branches().forEach(branch -> ends(at, branch, FaultPlace.LOAD));
            });
            List<Finding> findings = new ArrayList<>(SupplyRemarks.of(request, points));
            findings.addAll(judge.findings());
            findings.addAll(rating.findings());
            Set<Source> sources = new LinkedHashSet<>(distribution.sources());
            sources.addAll(judge.sources());
            findings.addAll(SupplyRemarks.fromMemory(sources));
            return new FaultResult(
                    List.copyOf(points),
                    List.copyOf(circuits),
                    rating.lowest(),
                    rating.weakestLink(),
                    rating.unrated(),
                    List.copyOf(sources),
                    List.copyOf(findings),
                    List.copyOf(derivations));
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

        private void secondary(FaultTransformer transformer, Reach panel) {
            FaultPoint point = distribution.secondary(transformer, panel);
            points.add(point);
            derivations.add(TransformerFaults.derivation(transformer, point));
        }

        private void add(FaultPoint point) {
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
    }
}
