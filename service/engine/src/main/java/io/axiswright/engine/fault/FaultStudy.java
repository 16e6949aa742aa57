package io.axiswright.engine.fault;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.standard.Source;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

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
        private final FaultSide mains;
        private final List<FaultSide> secondaries = new ArrayList<>();
        private final MachineRating rating;

        Run(FaultRequest request) {
            this.request = request;
            this.mains = new FaultSide(request);
            this.rating = new MachineRating(request);
        }

        FaultResult result() {
            mains.add(mains.distribution()
                    .point(
                            FaultPlace.SUPPLY_TERMINALS,
                            "supply terminals",
                            null,
                            mains.terminals(),
                            request.feeder().connection()));
            Optional<Reach> panel = mains.feeder(FaultPlace.MAINS_PANEL);
            panel.ifPresent(at -> {
                request.transformers().forEach(transformer -> secondary(transformer, at));
                mains.branches(at);
            });
            List<FaultPoint> points = sides().flatMap(s -> s.points().stream()).toList();
            List<Derivation> derivations = new ArrayList<>(mains.distribution().derivations());
            List<Finding> findings = new ArrayList<>(SupplyRemarks.of(request, points));
            Set<Source> sources = new LinkedHashSet<>();
            sides().forEach(side -> {
                derivations.addAll(side.derivations());
                findings.addAll(side.judge().findings());
                sources.addAll(side.distribution().sources());
                sources.addAll(side.judge().sources());
            });
            findings.addAll(rating.findings());
            Source.fromMemory(sources, FindingCode.FAULT_TABLE_FROM_MEMORY).ifPresent(findings::add);
            return new FaultResult(
                    points,
                    sides().flatMap(s -> s.circuits().stream()).toList(),
                    rating.lowest(),
                    rating.weakestLink(),
                    rating.unrated(),
                    List.copyOf(sources),
                    List.copyOf(findings),
                    List.copyOf(derivations));
        }

        private Stream<FaultSide> sides() {
            return Stream.concat(Stream.of(mains), secondaries.stream());
        }

        /** The secondary terminals, and what is behind them as a supply of its own. */
        private void secondary(FaultTransformer transformer, Reach panel) {
            FaultPoint point = mains.distribution().secondary(transformer, panel);
            mains.points().add(point);
            mains.derivations().add(TransformerFaults.derivation(transformer, point));
            FaultCircuit feeder = transformer.feeder();
            if (feeder != null) {
                var side = new FaultSide(request.behind(transformer, feeder, point));
                side.feeder(FaultPlace.SECONDARY_PANEL).ifPresent(side::branches);
                secondaries.add(side);
            }
        }
    }
}
