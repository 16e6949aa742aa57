package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Polynomial;
import java.util.ArrayList;
import java.util.List;

/**
 * A mechanism known by torque and inertia over its angle: T = J·a + J'·w²/2 + torque(angle).
 *
 * @param torque torque against the positive direction over the angle, N·m
 * @param inertia inertia over the angle, kg·m²
 * @param payload inertia carried on top, kg·m²
 * @param coulomb friction, always against the motion, N·m
 * @param viscous friction per speed, N·m·s
 * @param process torque of the process against the positive direction, N·m
 */
record CustomEffort(
        TableCurve torque, TableCurve inertia, double payload, double coulomb, double viscous, double process)
        implements TurningEffort {

    @Override
    public List<ShaftPiece> moving(LoadMotion motion) {
        double resisting = process + motion.direction() * coulomb;
        List<Double> breaks = breaks(motion.position().at(0), motion.position().at(motion.duration()));
        return Instants.ofShaft(motion, breaks, middle -> {
            TableCurve.Stretch torqueHere = torque.around(middle);
            TableCurve.Stretch inertiaHere = inertia.around(middle);
            Polynomial slope = inertiaHere.slope();
            return (angle, w, a) -> (inertiaHere.at(angle) + payload) * a
                    + slope.at(angle - inertiaHere.origin()) * w * w / 2
                    + torqueHere.at(angle)
                    + viscous * w
                    + resisting;
        });
    }

    @Override
    public ShaftRange range(
            Enclosure time, Enclosure position, Enclosure speed, Enclosure acceleration, double direction) {
        Enclosure felt = inertia.value(position)
                .plus(payload)
                .times(acceleration)
                .plus(inertia.slope(position).times(speed.squared()).times(0.5))
                .plus(torque.value(position))
                .plus(speed.times(viscous))
                .plus(process + direction * coulomb);
        return new ShaftRange(speed, acceleration, felt);
    }

    @Override
    public double holding(double position) {
        return torque.at(position) + process;
    }

    @Override
    public double largestHolding(double from, double to) {
        double largest = 0;
        for (double angle : extremes(from, to)) {
            double own = torque.at(angle);
            largest = Math.max(largest, Math.max(Math.abs(own), Math.abs(own + process)));
        }
        return largest;
    }

    @Override
    public double largestInertia(double from, double to) {
        double largest = 0;
        for (double angle : extremes(from, to)) {
            largest = Math.max(largest, inertia.at(angle) + payload);
        }
        return largest;
    }

    @Override
    public boolean falls() {
        for (double value : torque.y()) {
            if (value != 0) {
                return true;
            }
        }
        return false;
    }

    /** Both curves are largest at points of the table or at the ends. */
    private List<Double> extremes(double from, double to) {
        List<Double> angles = breaks(from, to);
        angles.add(from);
        angles.add(to);
        return angles;
    }

    /** The points of the table between two angles, turn after turn if it repeats. */
    private List<Double> breaks(double one, double other) {
        double from = Math.min(one, other);
        double to = Math.max(one, other);
        double first = torque.repeats() ? Math.floor((from - torque.x()[0]) / torque.period()) : 0;
        List<Double> angles = new ArrayList<>();
        double turn = first * torque.period();
        while (torque.x()[0] + turn < to) {
            for (double x : torque.x()) {
                if (x + turn > from && x + turn < to) {
                    angles.add(x + turn);
                }
            }
            if (!torque.repeats()) {
                break;
            }
            turn += torque.period();
        }
        return angles;
    }
}
