package io.axiswright.engine.duty;

import io.axiswright.engine.design.Belt;
import io.axiswright.engine.design.Conveyor;
import io.axiswright.engine.design.Crank;
import io.axiswright.engine.design.Custom;
import io.axiswright.engine.design.DirectDrive;
import io.axiswright.engine.design.Hoist;
import io.axiswright.engine.design.Mechanism;
import io.axiswright.engine.design.RackAndPinion;
import io.axiswright.engine.design.RotaryTable;
import io.axiswright.engine.design.Screw;
import io.axiswright.engine.design.Winder;

/**
 * Any mechanism in one common form: a load that its shaft feels, behind losses, on a shaft with inertia.
 *
 * @param endless whether it may go on in one direction for ever
 * @param start position of the load when the cycle begins, m or rad
 * @param shaftInertia inertia of the mechanism's shaft, kg·m²
 * @param drag friction torque of its shaft that does not depend on the load, N·m
 * @param efficiency efficiency between load and shaft
 * @param loading the load it moves
 */
record Mechanics(
        boolean endless, double start, double shaftInertia, double drag, Efficiency efficiency, Loading loading) {

    /** Standard acceleration of free fall, m/s² (3rd CGPM, 1901). */
    static final double FREE_FALL = 9.80665;

    /** What a mechanism moves, with what each segment adds. */
    @FunctionalInterface
    interface Loading {

        /** The load with a payload, kg or kg·m², and an effort of the process against the positive direction, N or N·m. */
        LoadEffort with(double payload, double process);
    }

    /** The one place that knows every mechanism. */
    static Mechanics of(Mechanism mechanism) {
        return switch (mechanism) {
            case Screw screw -> LinearMechanics.of(screw);
            case Belt belt -> LinearMechanics.of(belt);
            case RackAndPinion rack -> LinearMechanics.of(rack);
            case Conveyor conveyor -> LinearMechanics.of(conveyor);
            case Hoist hoist -> LinearMechanics.of(hoist);
            case RotaryTable table -> RotaryMechanics.of(table);
            case DirectDrive drive -> RotaryMechanics.of(drive);
            case Crank crank -> RotaryMechanics.of(crank);
            case Winder winder -> RotaryMechanics.of(winder);
            case Custom custom -> RotaryMechanics.of(custom);
        };
    }

    /** The load in one segment. */
    LoadEffort effort(double payload, double process) {
        return loading.with(payload, process);
    }
}
