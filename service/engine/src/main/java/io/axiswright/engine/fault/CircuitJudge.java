package io.axiswright.engine.fault;

import io.axiswright.engine.catalogue.ProtectiveDevice;
import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Area;
import io.axiswright.engine.quantity.ConductorSize;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.standard.AdiabaticFactor;
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

/** Judges circuits: whether their devices clear faults, soon enough, and their conductors and loads stand them. */
final class CircuitJudge {

    static final String INTERRUPTING = "NFPA 70 110.9; IEC 60364-4-43 434.5.1 (from memory)";
    static final String RATING = "NFPA 70 110.10; IEC 60204-1 7.2.10 (from memory)";
    private static final String WITHSTAND = "IEC 60364-4-43 434.5.2";
    private static final String LOOP = "IEC 60364-4-41:2005 411.4.4 (from memory), with c_min";
    private static final double MM2 = 1e6;

    private final FaultRequest request;
    private final Distribution distribution;
    private final SystemEarthing earthing;
    private final List<Finding> findings = new ArrayList<>();
    private final Set<Source> sources = new LinkedHashSet<>();
    private final Tally timesUnknown = new Tally(FindingCode.FAULT_DEVICE_TIMES_UNKNOWN, LOOP);
    private final Tally loopUnknown = new Tally(FindingCode.FAULT_EARTH_LOOP_UNKNOWN, LOOP);
    private final Tally residual =
            new Tally(FindingCode.FAULT_RESIDUAL_DEVICE_NEEDED, "IEC 60364-4-41:2005 411.5 (from memory)");

    CircuitJudge(FaultRequest request, Distribution distribution) {
        this.request = request;
        this.distribution = distribution;
        this.earthing = SupplyCases.earthing(request.mains());
    }

    List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        Stream.of(timesUnknown, loopUnknown, residual).flatMap(Tally::findings).forEach(all::add);
        return all;
    }

    /** The tables read so far. */
    Set<Source> sources() {
        return sources;
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
        FaultCurrents highest = distribution.highest(atDevice, circuit.connection());
        if (device != null
                && !Limits.within(
                        highest.largest().si(), device.interruptingRating().si())) {
            findings.add(FindingCode.FAULT_INTERRUPTING_RATING_LOW.at(
                    circuit.id(), circuit.pointer(), INTERRUPTING, highest.largest(), device.interruptingRating()));
        }
        Resistance loop = ends.stream()
                .map(distribution::loop)
                .filter(Objects::nonNull)
                .max(Comparator.comparingDouble(Resistance::si))
                .orElse(null);
        Optional<Sourced<Time>> time = device == null ? Optional.empty() : disconnectionTime(circuit, device);
        Current operating = device == null
                ? null
                : time.map(t -> device.operatingCurrent(t.value())).orElse(null);
        Resistance limit = operating == null
                ? null
                : new Resistance(distribution.lowestToEarth().si() / operating.si());
        time.ifPresent(t -> disconnection(circuit, t, loop, limit));
        return new CircuitFault(
                circuit.id(),
                device == null ? null : device.id(),
                highest.largest(),
                device == null ? null : device.interruptingRating(),
                ends.stream()
                        .map(end ->
                                distribution.lowest(end, circuit.connection()).smallest())
                        .min(Comparator.comparingDouble(Current::si))
                        .orElse(null),
                loop,
                limit,
                time.map(Sourced::value).orElse(null),
                device == null || loop == null
                        ? null
                        : device.clearingTime(
                                new Current(distribution.lowestToEarth().si() / loop.si())),
                device == null ? null : device.letThrough(highest.largest()),
                withstand(circuit, highest));
    }

    /** The time the code leaves an earth fault; none under NFPA 79, which asks for a path of low impedance only. */
    private Optional<Sourced<Time>> disconnectionTime(FaultCircuit circuit, ProtectiveDevice device) {
        if (request.codeBasis() == CodeBasis.NFPA_79) {
            return Optional.empty();
        }
        var toEarth = SupplyCases.lineToNeutral(request.mains());
        return circuit == request.feeder()
                ? DisconnectionTimes.ofDistributionCircuit(earthing, toEarth)
                : DisconnectionTimes.ofFinalCircuit(earthing, toEarth, device.rating());
    }

    /** An impedance that is too high even without what is not known of the supply is too high. */
    private void disconnection(
            FaultCircuit circuit, Sourced<Time> time, @Nullable Resistance loop, @Nullable Resistance limit) {
        sources.add(time.source());
        boolean stated = request.mains().earthFaultLoopImpedance() != null;
        if (earthing == SystemEarthing.TT && (loop == null || limit == null || loop.si() > limit.si())) {
            residual.add(circuit);
        } else if (limit == null) {
            timesUnknown.add(circuit);
        } else if (loop != null && !Limits.within(loop.si(), limit.si())) {
            findings.add(FindingCode.FAULT_DISCONNECTION_SLOW.at(
                    circuit.id() + " (" + time.value().si() + " s)", circuit.pointer(), LOOP, loop, limit));
        } else if (!stated) {
            loopUnknown.add(circuit);
        }
    }

    /** k²S² of the thinner conductor; a finding for each that the let-through of the device overheats. */
    private @Nullable JouleIntegral withstand(FaultCircuit circuit, FaultCurrents highest) {
        JouleIntegral line = withstand(circuit.conductor());
        check(circuit, "", highest.largest(), line);
        Current toEarth = highest.lineToEarth();
        JouleIntegral protective = withstand(circuit.protectiveConductor());
        if (toEarth != null) {
            check(circuit, " (protective conductor)", toEarth, protective);
        }
        return Stream.of(line, protective)
                .filter(Objects::nonNull)
                .min(Comparator.comparingDouble(JouleIntegral::si))
                .orElse(null);
    }

    private void check(FaultCircuit circuit, String which, Current fault, @Nullable JouleIntegral withstand) {
        ProtectiveDevice device = circuit.device();
        JouleIntegral through = device == null ? null : device.letThrough(fault);
        if (through != null && withstand != null && !Limits.within(through.si(), withstand.si())) {
            findings.add(FindingCode.FAULT_CONDUCTOR_HOT.at(
                    circuit.id() + which, circuit.pointer(), WITHSTAND, through, withstand));
        }
    }

    private @Nullable JouleIntegral withstand(@Nullable ConductorSize size) {
        if (size == null) {
            return null;
        }
        Area area = size.area();
        Sourced<Double> k = AdiabaticFactor.of(request.insulation(), area);
        sources.add(k.source());
        double root = k.value() * area.si() * MM2;
        return new JouleIntegral(root * root);
    }

    static Derivation derivation(CircuitFault fault, Distribution distribution) {
        return new Derivation(
                fault.id(),
                "I_k1,min",
                "c_min U_0 / Z_s",
                Derivation.inputs(
                        "c_min U_0",
                        distribution.lowestToEarth(),
                        "Z_s",
                        Objects.requireNonNull(fault.loopImpedance())),
                LOOP,
                new Current(distribution.lowestToEarth().si()
                        / fault.loopImpedance().si()));
    }

    /** Circuits of which the same is to be said, once, at the first of them. */
    private static final class Tally {
        private final FindingCode code;
        private final String clause;
        private @Nullable FaultCircuit first;
        private int number;

        Tally(FindingCode code, String clause) {
            this.code = code;
            this.clause = clause;
        }

        void add(FaultCircuit circuit) {
            first = first == null ? circuit : first;
            number++;
        }

        Stream<Finding> findings() {
            return first == null
                    ? Stream.empty()
                    : Stream.of(code.at(first.id(), first.pointer(), clause, new Ratio(number), null));
        }
    }
}
