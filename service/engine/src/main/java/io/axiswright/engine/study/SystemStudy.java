package io.axiswright.engine.study;

import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.fault.FaultResult;
import io.axiswright.engine.finding.Fault;
import io.axiswright.engine.finding.FaultCode;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.memory.Memory;
import io.axiswright.engine.mounting.MountingResult;
import io.axiswright.engine.quantity.NotFinite;
import io.axiswright.engine.stopping.StoppingResult;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutPlanning;
import io.axiswright.engine.topology.SearchGate;
import io.axiswright.engine.topology.TopologyRequest;
import io.axiswright.engine.topology.TopologyResult;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Works out a whole system, or the part of it a caller asks for. Every method throws {@link InvalidDesign} for a design
 * that cannot be given a meaning, with all its faults; a system that cannot be built is a result with violations.
 *
 * <p>Nothing but the order of lists in the answer follows from the order of those lists in the request that are marked
 * {@link io.axiswright.engine.quantity.AnyOrder}; what an answer numbers, such as circuits and gateways, it numbers in the order of ids.
 */
public final class SystemStudy {

    /** Plans layouts; a function of its own so that studies alike in everything the layout follows from can share it. */
    @FunctionalInterface
    interface Planner {
        TopologyResult plan(TopologyRequest request);
    }

    private final LayoutEffort effort;
    private final Planner planner;
    private final Memory memory;

    private SystemStudy(LayoutEffort effort, Planner planner, Memory memory) {
        this.effort = effort;
        this.planner = planner;
        this.memory = memory;
    }

    /** A study that looks for layouts with the given effort. */
    public static SystemStudy with(LayoutEffort effort) {
        return new SystemStudy(effort, new LayoutPlanning()::plan, Memory.NONE);
    }

    /** A study that proves its layouts as far as the deterministic limit of the search allows. */
    public static SystemStudy proving() {
        return with(LayoutEffort.PROVEN);
    }

    /** The same, and its searches pass a gate they share with others. */
    public static SystemStudy proving(SearchGate gate) {
        return new SystemStudy(LayoutEffort.PROVEN, new LayoutPlanning(gate)::plan, Memory.NONE);
    }

    /** A proving study whose layouts are planned by somebody else, and that shares a memory with others like it. */
    static SystemStudy planned(Planner planner, Memory memory) {
        return new SystemStudy(LayoutEffort.PROVEN, planner, memory);
    }

    /**
     * The same study with a memory: what designs studied one after the other have in common is worked out once. The answers are the
     * same. For one thread.
     */
    public SystemStudy remembering() {
        return new SystemStudy(effort, planner, new Memory());
    }

    /** Magnitudes so absurd that the numbers leave what a computer can hold have no meaning for an engineer either. */
    private <T> T meaningful(StudyRequest request, Function<StudyRun, T> part) {
        try {
            StudyRun.check(request.design());
            CanonicalRequest canonical = CanonicalRequest.of(request);
            return canonical.asSent(worked(part, canonical));
        } catch (NotFinite e) {
            throw new InvalidDesign(List.of(new Fault(
                    "",
                    FaultCode.OUT_OF_RANGE,
                    "a magnitude in the design or the catalogue leads to numbers beyond computing",
                    "magnitudes of real machines")));
        }
    }

    private <T> T worked(Function<StudyRun, T> part, CanonicalRequest canonical) {
        try {
            return part.apply(new StudyRun(canonical.value(), effort, planner, memory));
        } catch (InvalidDesign e) {
            throw canonical.asSent(e);
        }
    }

    /** Duty of every axis, and the drive units. */
    public DutyResult duty(StudyRequest request) {
        return meaningful(request, StudyRun::duty);
    }

    /** The control network; needs {@code design.network}. */
    public TopologyResult topology(StudyRequest request) {
        return meaningful(request, StudyRun::topology);
    }

    /** The 24 V control supply; needs {@code design.network} and {@code design.controlPower}. */
    public ControlPowerResult controlPower(StudyRequest request) {
        return meaningful(request, StudyRun::controlPower);
    }

    /** Where returned energy goes. */
    public BrakingResult braking(StudyRequest request) {
        return meaningful(request, StudyRun::brakingAlone);
    }

    /** How every stop zone comes to rest, what a loss of power does, and how far safeguards must be. */
    public StoppingResult stopping(StudyRequest request) {
        return meaningful(request, StudyRun::stopping);
    }

    /** AC branch circuits and feeder; needs everything but the mountings. */
    public SupplyResult supply(StudyRequest request) {
        return meaningful(request, StudyRun::supply);
    }

    /** Conductors of the circuits of {@link #supply}. */
    public ConductorResult conductors(StudyRequest request) {
        return meaningful(request, StudyRun::conductors);
    }

    /** Short-circuit currents on the circuits of {@link #supply} with the conductors of {@link #conductors}. */
    public FaultResult faults(StudyRequest request) {
        return meaningful(request, StudyRun::faults);
    }

    /** Fastening and fit of the drive units. */
    public MountingResult mounting(StudyRequest request) {
        return meaningful(request, StudyRun::mounting);
    }

    /** Everything to be bought. */
    public BillResult billOfMaterials(StudyRequest request) {
        return meaningful(request, StudyRun::billOfMaterials);
    }

    /** The whole system. */
    public StudyResult system(StudyRequest request) {
        return meaningful(request, StudyRun::system);
    }

    /** The whole system, beside the same machine in another market; what both have in common is worked out once. */
    public StudyResult system(StudyRequest request, OtherMarket other) {
        SystemStudy both = remembering();
        StudyResult here = both.system(request);
        try {
            StudyResult there = both.system(other.request(request));
            return Markets.beside(here, new Retelling(other::pointer, Map.of()).of(there));
        } catch (InvalidDesign e) {
            throw new InvalidDesign(e.faults().stream()
                    .map(fault -> fault.at(other.pointer(fault.pointer())))
                    .toList());
        }
    }
}
