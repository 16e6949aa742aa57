package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import java.util.List;

/**
 * A load that goes evenly with its shaft: exact polynomials whatever the law. Newtons and kilograms for linear axes, newton
 * metres and kilogram square metres for rotary ones.
 *
 * @param travel how far the load goes per radian of the shaft
 * @param mass moved mass or inertia
 * @param gravity effort of gravity against the positive direction, at position 0
 * @param rise how much that effort rises per travel: rope that comes and goes
 * @param coulomb friction that does not depend on speed, always against the motion
 * @param viscous friction per speed
 * @param process effort of the process against the positive direction
 */
record EvenEffort(
        double travel, double mass, double gravity, double rise, double coulomb, double viscous, double process)
        implements LoadEffort {

    /** Weights below this share of the moved mass's own are rounding of an angle. */
    static final double LEAST_SLOPE = 1e-9;

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        Polynomial speed = motion.position().derivative();
        Polynomial effort = speed.derivative()
                .times(mass)
                .plus(speed.times(viscous))
                .plus(motion.position().times(rise))
                .plus(gravity + process + motion.direction() * coulomb);
        return List.of(ShaftPiece.of(motion, travel, effort.times(travel)));
    }

    @Override
    public List<ShaftPiece> levers(LoadMotion motion) {
        return List.of(ShaftPiece.of(motion, travel, Polynomial.of(travel)));
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        Enclosure effort = acceleration
                .times(mass)
                .plus(speed.times(viscous))
                .plus(position.times(rise))
                .plus(gravity + process + direction * coulomb);
        return new ShaftRange(speed.times(1 / travel), acceleration.times(1 / travel), effort.times(travel));
    }

    @Override
    public double lever(double position) {
        return travel;
    }

    @Override
    public double holding(double position) {
        return (weight(position) + process) * travel;
    }

    @Override
    public double largestHolding(double from, double to) {
        return Math.max(largestHolding(from), largestHolding(to));
    }

    @Override
    public double friction() {
        return coulomb * travel;
    }

    @Override
    public double viscousFriction() {
        return viscous * travel * travel;
    }

    @Override
    public double largestInertia(double from, double to) {
        return mass * travel * travel;
    }

    @Override
    public boolean falls() {
        return rise != 0 || Math.abs(gravity) > LEAST_SLOPE * Mechanics.FREE_FALL * mass;
    }

    @Override
    public boolean uneven() {
        return false;
    }

    private double largestHolding(double position) {
        return Math.max(Math.abs(weight(position)), Math.abs(weight(position) + process)) * travel;
    }

    private double weight(double position) {
        return gravity + rise * position;
    }
}
