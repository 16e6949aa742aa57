package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.DisconnectionTimes;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Source;
import io.axiswright.engine.standard.Sourced;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Judges whether protective devices disconnect faults to earth in time. */
final class EarthFaultJudge {

    private static final String LOOP = "IEC 60364-4-41:2005 411.4.4 (from memory), with c_min";
    private static final String ELECTRODES = "IEC 60364-4-41:2005 411.5 (from memory)";

    private final FaultRequest request;
    private final Distribution distribution;
    private final SystemEarthing earthing;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<Source> sources = new LinkedHashSet<>();
    private final Tally timesUnknown = new Tally(FindingCode.FAULT_DEVICE_TIMES_UNKNOWN, LOOP);
    private final Tally loopUnknown = new Tally(FindingCode.FAULT_EARTH_LOOP_UNKNOWN, LOOP);
    private final Tally residual = new Tally(FindingCode.FAULT_RESIDUAL_DEVICE_NEEDED, ELECTRODES);

    EarthFaultJudge(FaultRequest request, Distribution distribution) {
        this.request = request;
        this.distribution = distribution;
        this.earthing = SupplyCases.earthing(request.mains());
    }

    Stream<Finding> findings() {
        return Stream.concat(
                findings.stream(),
                Stream.of(timesUnknown, loopUnknown, residual).flatMap(Tally::findings));
    }

    Set<Source> sources() {
        return sources;
    }

    /** A circuit, by its ends as far as they have conductors. */
    Disconnection of(FaultCircuit circuit, List<Reach> ends) {
        Resistance loop = ends.stream()
                .map(distribution::loop)
                .filter(Objects::nonNull)
                .max(Comparator.comparingDouble(Resistance::si))
                .orElse(null);
        ProtectiveDevice device = circuit.device();
        if (device == null) {
            return new Disconnection(loop, null, null, null);
        }
        double volts = distribution.lowestToEarth().si();
        Optional<Sourced<Time>> asked = asked(circuit, device);
        Current operating =
                asked.map(time -> device.operatingCurrent(time.value())).orElse(null);
        Resistance limit = operating == null ? null : new Resistance(volts / operating.si());
        asked.ifPresent(time -> judge(circuit, time, loop, limit));
        return new Disconnection(
                loop,
                limit,
                asked.map(Sourced::value).orElse(null),
                loop == null ? null : device.clearingTime(new Current(volts / loop.si())));
    }

    /** The time the code leaves an earth fault; none under NFPA 79, which asks for a path of low impedance only. */
    private Optional<Sourced<Time>> asked(FaultCircuit circuit, ProtectiveDevice device) {
        if (request.codeBasis() == CodeBasis.NFPA_79) {
            return Optional.empty();
        }
        var toEarth = SupplyCases.lineToNeutral(request.mains());
        return circuit == request.feeder()
                ? DisconnectionTimes.ofDistributionCircuit(earthing, toEarth)
                : DisconnectionTimes.ofFinalCircuit(earthing, toEarth, device.rating());
    }

    /** An impedance that is too high even without what is not known of the supply is too high. */
    private void judge(
            FaultCircuit circuit, Sourced<Time> time, @Nullable Resistance loop, @Nullable Resistance limit) {
        sources.add(time.source());
        boolean holds = loop != null && limit != null && Limits.within(loop.si(), limit.si());
        if (earthing == SystemEarthing.TT) {
            if (!holds) {
                residual.add(circuit);
            }
        } else if (limit == null) {
            timesUnknown.add(circuit);
        } else if (loop != null && !holds) {
            findings.add(FindingCode.FAULT_DISCONNECTION_SLOW.at(
                    circuit.id() + " (" + time.value().si() + " s)", circuit.pointer(), LOOP, loop, limit));
        } else if (request.mains().earthFaultLoopImpedance() == null) {
            loopUnknown.add(circuit);
        }
    }

    /** How the lowest earth-fault current of a circuit came about; nothing where its loop is not known. */
    Optional<Derivation> derivation(CircuitFault fault) {
        Resistance loop = fault.loopImpedance();
        return Optional.ofNullable(loop)
                .map(ohms -> new Derivation(
                        fault.id(),
                        "I_k1,min",
                        "c_min U_0 / Z_s",
                        Derivation.inputs("c_min U_0", distribution.lowestToEarth(), "Z_s", ohms),
                        LOOP,
                        new Current(distribution.lowestToEarth().si() / ohms.si())));
    }
}
