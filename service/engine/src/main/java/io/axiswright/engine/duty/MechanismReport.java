package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import java.util.List;

/**
 * What the cycle does to the mechanism itself.
 *
 * @param findings what is to be said about it
 * @param derivations the numbers behind
 */
record MechanismReport(List<Finding> findings, List<Derivation> derivations) {

    static final MechanismReport NONE = new MechanismReport(List.of(), List.of());

    /** Of one axis; the pointer leads to it. */
    static MechanismReport of(Axis axis, String pointer, AxisLoad load) {
        return switch (axis.mechanism()) {
            case Screw screw -> new ScrewChecks(axis.id(), pointer + "/mechanism", screw, load).report();
            case Belt belt -> BeltChecks.report(axis.id(), pointer + "/mechanism", belt, load);
            default -> NONE;
        };
    }
}
