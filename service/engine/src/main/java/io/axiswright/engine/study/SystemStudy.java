package io.axiswright.engine.study;

import io.axiswright.engine.bill.BillResult;
import io.axiswright.engine.braking.BrakingResult;
import io.axiswright.engine.conductor.ConductorResult;
import io.axiswright.engine.controlpower.ControlPowerResult;
import io.axiswright.engine.duty.DutyResult;
import io.axiswright.engine.finding.InvalidDesign;
import io.axiswright.engine.mounting.MountingResult;
import io.axiswright.engine.supply.SupplyResult;
import io.axiswright.engine.topology.LayoutEffort;
import io.axiswright.engine.topology.LayoutPlanning;
import io.axiswright.engine.topology.TopologyRequest;
import io.axiswright.engine.topology.TopologyResult;
import java.util.HashMap;
import java.util.Map;

/**
 * Works out a whole system, or the part of it a caller asks for. Every method throws {@link InvalidDesign} for a design
 * that cannot be given a meaning, with all its faults; a system that cannot be built is a result with violations.
 */
public final class SystemStudy {

    /** Plans layouts; a function of its own so that studies alike in everything the layout follows from can share it. */
    @FunctionalInterface
    interface Planner {
        TopologyResult plan(TopologyRequest request);
    }

    private final LayoutEffort effort;
    private final Planner planner;

    private SystemStudy(LayoutEffort effort, Planner planner) {
        this.effort = effort;
        this.planner = planner;
    }

    /** A study that looks for layouts with the given effort. */
    public static SystemStudy with(LayoutEffort effort) {
        return new SystemStudy(effort, new LayoutPlanning()::plan);
    }

    /** A study that proves its layouts as far as the deterministic limit of the search allows. */
    public static SystemStudy proving() {
        return with(LayoutEffort.PROVEN);
    }

    /** A proving study that plans each layout once; for the many studies of one comparison, by one thread. */
    public static SystemStudy remembering() {
        Map<TopologyRequest, TopologyResult> known = new HashMap<>();
        Planner planner = new LayoutPlanning()::plan;
        return new SystemStudy(LayoutEffort.PROVEN, request -> known.computeIfAbsent(request, planner::plan));
    }

    /** Duty of every axis, and the drive units. */
    public DutyResult duty(StudyRequest request) {
        return run(request).duty();
    }

    /** The control network; needs {@code design.network}. */
    public TopologyResult topology(StudyRequest request) {
        return run(request).topology();
    }

    /** The 24 V control supply; needs {@code design.network} and {@code design.controlPower}. */
    public ControlPowerResult controlPower(StudyRequest request) {
        return run(request).controlPower();
    }

    /** Where returned energy goes. */
    public BrakingResult braking(StudyRequest request) {
        return run(request).braking();
    }

    /** AC branch circuits and feeder; needs everything but the mountings. */
    public SupplyResult supply(StudyRequest request) {
        return run(request).supply();
    }

    /** Conductors of the circuits of {@link #supply}. */
    public ConductorResult conductors(StudyRequest request) {
        return run(request).conductors();
    }

    /** Fastening and fit of the drive units. */
    public MountingResult mounting(StudyRequest request) {
        return run(request).mounting();
    }

    /** Everything to be bought. */
    public BillResult billOfMaterials(StudyRequest request) {
        return run(request).billOfMaterials();
    }

    /** The whole system. */
    public StudyResult system(StudyRequest request) {
        return run(request).system();
    }

    private StudyRun run(StudyRequest request) {
        return new StudyRun(request, effort, planner);
    }
}
