package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What the cycle and the controlled stops in it do to the mechanism itself.
 *
 * @param findings what is to be said about it
 * @param derivations the numbers behind
 */
record MechanismReport(List<Finding> findings, List<Derivation> derivations) {

    static final MechanismReport NONE = new MechanismReport(List.of(), List.of());

    /**
     * The greatest torque the load asks for at the shaft of a mechanism that is checked for it, before any loss, N·m: in the cycle
     * or in a controlled stop from wherever in it.
     */
    static double hardestPull(Axis axis, GearedLoad way) {
        return switch (axis.mechanism()) {
            case Screw _, Belt _, RackAndPinion _ -> Math.max(way.load().hardestPull(), HardestStop.pull(way));
            default -> way.load().hardestPull();
        };
    }

    /**
     * Of one axis.
     *
     * @param pointer leads to it
     * @param hardestPull the greatest torque at the mechanism's shaft, stops included, N·m
     */
    static MechanismReport of(Axis axis, String pointer, AxisLoad load, double hardestPull) {
        return switch (axis.mechanism()) {
            case Screw screw -> new ScrewChecks(axis.id(), pointer + "/mechanism", screw, load, hardestPull).report();
            case Belt belt -> BeltChecks.report(axis.id(), pointer + "/mechanism", belt, hardestPull);
            default -> NONE;
        };
    }
}
