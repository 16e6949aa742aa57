package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import java.util.List;

/**
 * A rotary load with its centre of mass beside a tilted axis.
 *
 * @param inertia moved inertia, kg·m²
 * @param moment torque of its weight at angle 0, N·m; it goes with the cosine of the angle
 * @param coulomb friction, always against the motion, N·m
 * @param viscous friction per speed, N·m·s
 * @param process torque of the process against the positive direction, N·m
 */
record SwingEffort(double inertia, double moment, double coulomb, double viscous, double process)
        implements TurningEffort {

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        double resisting = process + motion.direction() * coulomb;
        return Instants.ofShaft(
                Turns.first(motion), (angle, w, a) -> inertia * a + viscous * w + moment * Math.cos(angle) + resisting);
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        Enclosure torque = acceleration
                .times(inertia)
                .plus(speed.times(viscous))
                .plus(position.cosine().times(moment))
                .plus(process + direction * coulomb);
        return new ShaftRange(speed, acceleration, torque);
    }

    @Override
    public double holding(double position) {
        return moment * Math.cos(position) + process;
    }

    @Override
    public double largestHolding(double from, double to) {
        double end = Turns.end(from, to);
        return Math.max(
                Instants.largest(this::holding, from, end),
                Instants.largest(angle -> moment * Math.cos(angle), from, end));
    }

    @Override
    public double largestInertia(double from, double to) {
        return inertia;
    }

    @Override
    public boolean falls() {
        return moment > 0;
    }
}
