package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;

/**
 * An element that passes torque from the load's side to the motor's: the mechanism itself, or a gear.
 *
 * @param ratio turns of its input per turn of its output
 * @param efficiency its efficiency
 * @param inertia inertia on its input shaft, kg·m²
 * @param drag torque it takes at its input shaft whatever the load, always against the motion, N·m
 */
record Stage(double ratio, Efficiency efficiency, double inertia, double drag) {

    /**
     * The torque wanted at its input.
     *
     * @param torque torque wanted at its output
     * @param motorDrives whether power goes from the input to the output
     * @param acceleration acceleration of its input shaft
     * @param direction sign of the speed
     */
    Polynomial passed(Polynomial torque, boolean motorDrives, Polynomial acceleration, double direction) {
        return efficiency
                .passed(torque, motorDrives)
                .times(1 / ratio)
                .plus(acceleration.times(inertia))
                .plus(direction * drag);
    }

    /** The torque wanted at its input over a range of motions; the efficiency goes with the sign of each torque. */
    Enclosure passed(Enclosure torque, Enclosure acceleration, double direction) {
        return efficiency
                .passed(torque, direction)
                .times(1 / ratio)
                .plus(acceleration.times(inertia))
                .plus(direction * drag);
    }

    /** What of a torque at its input is left for its load: all but its own inertia and drag. */
    Polynomial left(Polynomial input, Polynomial acceleration, double direction) {
        return input.minus(acceleration.times(inertia)).plus(-direction * drag);
    }
}
