package io.axiswright.engine.study;

import io.axiswright.engine.catalogue.BulkCable;
import io.axiswright.engine.catalogue.Cheapest;
import io.axiswright.engine.conductor.CircuitConductors;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.ConductorMaterial;
import io.axiswright.engine.design.Installation;
import io.axiswright.engine.design.Insulation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.standard.InsulationUnder;
import io.axiswright.engine.standard.ProtectiveConductors;
import io.axiswright.engine.study.CircuitConductoring.Piece;
import io.axiswright.engine.study.CircuitConductoring.PowerCable;
import io.axiswright.engine.supply.Feeder;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Picks the cheapest power cable of the catalogue that has the cores, the size and the insulation a circuit needs. */
final class PowerCableChoice {

    private final List<BulkCable> cables;
    private final String pointer;
    private final CodeBasis basis;
    private final boolean metric;
    private final Insulation insulation;
    private final Installation installation;
    private final List<Finding> findings = new ArrayList<>();

    PowerCableChoice(StudyRequest request) {
        this.cables = request.catalogue().bulkCables();
        this.pointer = request.catalogueSource().list("bulkCables", cables);
        this.basis = request.codeBasis();
        this.metric = basis == CodeBasis.IEC_60204_1;
        this.insulation = Needed.insulation(request.codeBasis(), request.design());
        this.installation = Needed.installation(request.design());
    }

    /**
     * The cable of a circuit; none, and a finding, if the catalogue has none that serves. Where it is flexed one that may be; where
     * there is none so thick, another: that its route bends it is told of the route.
     */
    @Nullable
    PowerCable cable(CircuitConductors conductors, int cores, List<Piece> pieces, boolean moving) {
        ConductorSize size = conductors.conductor();
        if (size == null) {
            return null;
        }
        var material = conductors.id().equals(Feeder.ID) ? installation.ofFeeder() : installation.material();
        ConductorSize protective = conductors.protectiveConductor();
        BulkCable cable = (moving
                        ? best(material, cores, size, protective, BulkCable::flexible)
                        : Optional.<BulkCable>empty())
                .or(() -> best(material, cores, size, protective, _ -> true))
                .orElse(null);
        if (cable == null) {
            double end = fitting(material, cores)
                    .mapToDouble(c -> c.size().area().si())
                    .max()
                    .orElse(0);
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
                    ProtectiveConductors.reinforcement(basis, material).source().told(),
                    cable.size().area(),
                    protective.area()));
        }
        return new PowerCable(conductors.id(), cable.id(), pieces, moving);
    }

    private static ConductorSize largest(ConductorSize size, @Nullable ConductorSize protective) {
        return protective == null || protective.compareTo(size) < 0 ? size : protective;
    }

    /**
     * The cables with a price that would serve as well as the one selected, the cheapest of each size, thinnest first: none is
     * thinner than the code asks for.
     */
    List<BulkCable> alternatives(CircuitConductors conductors, BulkCable selected, boolean moving) {
        ConductorSize size = Objects.requireNonNull(conductors.conductor());
        ConductorSize largest = largest(size, conductors.protectiveConductor());
        ConductorSize least = selected.size().compareTo(largest) < 0 ? size : largest;
        var ofSize = new TreeMap<ConductorSize, BulkCable>();
        fitting(selected.metal(), selected.cores())
                .filter(c -> c.price() != null && c.size().compareTo(least) >= 0)
                .filter(c -> !moving || c.flexible() || !selected.flexible())
                .forEach(c -> ofSize.merge(c.size(), c, BinaryOperator.minBy(Cheapest.FIRST)));
        return List.copyOf(ofSize.values());
    }

    /** All cores of a cable are of one size, so its protective core is as thick as its lines. */
    private Optional<BulkCable> best(
            ConductorMaterial material,
            int cores,
            ConductorSize size,
            @Nullable ConductorSize protective,
            Predicate<BulkCable> may) {
        return cheapest(material, cores, largest(size, protective), may).or(() -> cheapest(material, cores, size, may));
    }

    private Optional<BulkCable> cheapest(
            ConductorMaterial material, int cores, ConductorSize least, Predicate<BulkCable> may) {
        return fitting(material, cores)
                .filter(may)
                .filter(c -> c.size().compareTo(least) >= 0)
                .min(Cheapest.FIRST);
    }

    private Stream<BulkCable> fitting(ConductorMaterial material, int cores) {
        return cables.stream()
                .filter(c -> c.metal() == material)
                .filter(c -> c.cores() == cores && c.size().isMetric() == metric)
                .filter(c -> InsulationUnder.celsius(c.insulation()) >= InsulationUnder.celsius(insulation));
    }

    List<Finding> findings() {
        return List.copyOf(findings);
    }
}
