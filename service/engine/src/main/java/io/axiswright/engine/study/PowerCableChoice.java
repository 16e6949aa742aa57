package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.study.CircuitConductoring.Piece;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Picks the cheapest power cable of the catalogue that has the cores, the size and the insulation a circuit needs. */
final class PowerCableChoice {

    private final List<BulkCable> cables;
    private final String pointer;
    private final CodeBasis basis;
    private final boolean metric;
    private final Insulation insulation;
    private final List<Finding> findings = new ArrayList<>();

    PowerCableChoice(StudyRequest request) {
        this.cables = request.catalogue().bulkCables();
        this.pointer = request.catalogueSource().list("bulkCables", cables);
        this.basis = request.codeBasis();
        this.metric = basis == CodeBasis.IEC_60204_1;
        this.insulation = Needed.insulation(request.codeBasis(), request.design());
    }

    /** The cable of a circuit; none, and a finding, if the catalogue has none that serves. */
    @Nullable
    PowerCable cable(CircuitConductors conductors, int cores, List<Piece> pieces) {
        ConductorSize size = conductors.conductor();
        if (size == null) {
            return null;
        }
        ConductorSize protective = conductors.protectiveConductor();
        BulkCable cable = cheapest(cores, largest(size, protective))
                .or(() -> cheapest(cores, size))
                .orElse(null);
        if (cable == null) {
            double end =
                    fitting(cores).mapToDouble(c -> c.size().area().si()).max().orElse(0);
            findings.add(FindingCode.STUDY_NO_POWER_CABLE.at(
                    conductors.id(), pointer, "completeness", size.area(), new Area(end)));
            return null;
        }
        if (protective != null && cable.size().compareTo(protective) < 0) {
            // only for leakage does a protective conductor exceed the lines; without a cable so thick a second one
            // serves as well
            findings.add(FindingCode.STUDY_PROTECTIVE_CORE_THIN.at(
                    conductors.id(),
                    pointer,
                    ProtectiveConductors.reinforcement(basis).source().told(),
                    cable.size().area(),
                    protective.area()));
        }
        return new PowerCable(conductors.id(), cable.id(), pieces);
    }

    private static ConductorSize largest(ConductorSize size, @Nullable ConductorSize protective) {
        return protective == null || protective.compareTo(size) < 0 ? size : protective;
    }

    /**
     * The cables with a price that would serve as well as the one selected, the cheapest of each size, thinnest first: none is
     * thinner than the code asks for.
     */
    List<BulkCable> alternatives(CircuitConductors conductors, BulkCable selected) {
        ConductorSize size = Objects.requireNonNull(conductors.conductor());
        ConductorSize largest = largest(size, conductors.protectiveConductor());
        ConductorSize least = selected.size().compareTo(largest) < 0 ? size : largest;
        var ofSize = new TreeMap<ConductorSize, BulkCable>();
        fitting(selected.cores())
                .filter(c -> c.price() != null && c.size().compareTo(least) >= 0)
                .forEach(c -> ofSize.merge(c.size(), c, BinaryOperator.minBy(Cheapest.FIRST)));
        return List.copyOf(ofSize.values());
    }

    /** All cores of a cable are of one size, so its protective core is as thick as its lines. */
    private Optional<BulkCable> cheapest(int cores, ConductorSize least) {
        return fitting(cores).filter(c -> c.size().compareTo(least) >= 0).min(Cheapest.FIRST);
    }

    private Stream<BulkCable> fitting(int cores) {
        return cables.stream()
                .filter(c -> c.cores() == cores && c.size().isMetric() == metric)
                .filter(c -> InsulationUnder.celsius(c.insulation()) >= InsulationUnder.celsius(insulation));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
