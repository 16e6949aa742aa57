package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Polynomial;

/**
 * What moves and what resists on the load's side of a mechanism during one segment. Newtons and kilograms for linear axes,
 * newton metres and kilogram square metres for rotary ones.
 *
 * @param mass moved mass or inertia
 * @param gravity effort of gravity against the positive direction
 * @param coulomb friction that does not depend on speed, always against the motion
 * @param viscous friction per speed
 * @param process effort of the process against the positive direction
 */
record LoadEffort(double mass, double gravity, double coulomb, double viscous, double process) {

    /** The effort that moves the load; the direction is the sign of the speed. */
    Polynomial moving(Polynomial speed, double direction) {
        return speed.derivative().times(mass).plus(speed.times(viscous)).plus(gravity + process + direction * coulomb);
    }

    /** The effort at rest. Friction would help to hold but wears, dries and shakes loose: it is not counted on. */
    double holding() {
        return gravity + process;
    }

    /** The largest effort a brake may have to hold: the process may have let go. */
    double largestHolding() {
        return Math.max(Math.abs(gravity), Math.abs(holding()));
    }
}
