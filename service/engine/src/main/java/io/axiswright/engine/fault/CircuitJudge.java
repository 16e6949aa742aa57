package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Judges circuits: whether their devices clear faults, soon enough, and their conductors and loads stand them. */
final class CircuitJudge {

    private static final String INTERRUPTING = "NFPA 70 110.9; IEC 60364-4-43 434.5.1 (from memory)";
    private static final String RATING = "NFPA 70 110.10; IEC 60204-1 7.2.10 (from memory)";

    private final Distribution distribution;
    private final EarthFaultJudge earthFaults;
    private final HeatJudge heat;
    private final List<Finding> findings = new ArrayList<>();

    CircuitJudge(FaultRequest request, Distribution distribution) {
        this.distribution = distribution;
        this.earthFaults = new EarthFaultJudge(request, distribution);
        this.heat = new HeatJudge(request.insulation());
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(heat.findings());
        earthFaults.findings().forEach(all::add);
        return all;
    }

    /** The tables read so far. */
    Set<Source> sources() {
        Set<Source> all = new LinkedHashSet<>(earthFaults.sources());
        all.addAll(heat.sources());
        return all;
    }

    /** Whether what stands at the end of a circuit is rated for the fault there. */
    void end(CircuitEnd end, FaultPoint point) {
        Current rating = end.shortCircuitRating();
        Current fault = point.maximum().largest();
        if (rating != null && !Limits.within(fault.si(), rating.si())) {
            findings.add(FindingCode.FAULT_LOAD_RATING_LOW.at(end.id(), end.pointer(), RATING, fault, rating));
        }
    }

    /**
     * A circuit.
     *
     * @param origin where its device stands
     * @param ends its ends, as far as they have conductors
     */
    CircuitFault circuit(FaultCircuit circuit, Reach origin, List<Reach> ends) {
        ProtectiveDevice device = circuit.device();
        Reach atDevice = distribution.along(origin, circuit, 0).orElseThrow();
        FaultCurrents faults = distribution.highest(atDevice, circuit.connection());
        Current highest = faults.largest();
        if (device != null) {
            interrupting(circuit, device.interruptingRating(), highest);
        }
        Disconnection disconnection = earthFaults.of(circuit, ends);
        return new CircuitFault(
                circuit.id(),
                device == null ? null : device.id(),
                highest,
                device == null ? null : device.interruptingRating(),
                ends.stream()
                        .map(end ->
                                distribution.lowest(end, circuit.connection()).smallest())
                        .min(Comparator.comparingDouble(Current::si))
                        .orElse(null),
                disconnection.loop(),
                disconnection.limit(),
                disconnection.asked(),
                disconnection.taken(),
                device == null ? null : device.letThrough(highest),
                heat.withstand(circuit, faults));
    }

    private void interrupting(FaultCircuit circuit, Current rating, Current highest) {
        if (!Limits.within(highest.si(), rating.si())) {
            findings.add(FindingCode.FAULT_INTERRUPTING_RATING_LOW.at(
                    circuit.id(), circuit.pointer(), INTERRUPTING, highest, rating));
        }
    }

    /** How the lowest earth-fault current of a circuit came about; nothing where its loop is not known. */
    Optional<Derivation> derivation(CircuitFault fault) {
        return earthFaults.derivation(fault);
    }
}
