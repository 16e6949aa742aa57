package io.axiswright.engine.duty;

import io.axiswright.engine.numeric.Enclosure;
import io.axiswright.engine.numeric.Enclosure.Range;

/**
 * Even decelerations to rest by the mechanism's own formulas, many at once: one variable is when in the cycle the stop begins,
 * the other how much of it is over.
 *
 * @param drivetrain the way from the load to the motor
 * @param inertia inertia of the motor and what turns with it, kg·m²
 * @param duration from the start of deceleration to rest, s
 */
record ManyStops(Drivetrain drivetrain, double inertia, double duration) {

    /** The most parts a stop is cut into to see how much those begun in an interval differ. */
    private static final int MOST_PARTS = 64;

    private static final int LEAST_PARTS = 16;

    /** The shortest part worth looking at, as a share of the stop. */
    private static final double SHORTEST = 1e-4;

    /** The motor in the stops begun within a half width of a time since the start of a piece, while such a share of them is over. */
    MotorRange over(StopStretch stretch, double time, double share, double halfTime, double halfShare) {
        Enclosure start = stretch.speed(time, halfTime);
        double first = share - halfShare;
        double last = share + halfShare;
        var left = new Enclosure(1 - last, 1 - first, Range.NONE, new Range(-1, -1));
        var way = new Enclosure(
                first - first * first / 2, last - last * last / 2, Range.NONE, new Range(1 - last, 1 - first));
        Enclosure position =
                stretch.position(time, halfTime, start).plus(start.times(way).times(duration));
        var begun = new Enclosure(time - halfTime, time + halfTime, new Range(1, 1), Range.NONE);
        return atMotor(
                stretch.piece()
                        .effort()
                        .range(begun, position, start.times(left), start.times(-1 / duration), stretch.direction()),
                stretch.direction());
    }

    private MotorRange atMotor(ShaftRange shaft, double direction) {
        Enclosure torque = shaft.torque();
        double turns = 1;
        for (Stage stage : drivetrain.stages()) {
            turns *= stage.ratio();
            torque = stage.passed(torque, shaft.acceleration().times(turns), direction);
        }
        Enclosure acceleration = shaft.acceleration().times(turns);
        return new MotorRange(shaft.speed().times(turns), torque.plus(acceleration.times(inertia)));
    }

    /** The power of the stops begun between two times since the start of a piece. */
    PowerBend bend(LoadPiece piece, double from, double to, double lossPerTorqueSquared) {
        StopStretch stretch = StopStretch.of(piece, from, to);
        if (stretch.direction() == 0) {
            return PowerBend.NONE;
        }
        var parts = new Parts(stretch, (from + to) / 2, (to - from) / 2, lossPerTorqueSquared);
        int count = (int) Math.clamp(Math.ceil(duration / (to - from)), LEAST_PARTS, MOST_PARTS);
        for (int k = 0; k < count; k++) {
            parts.add((k + 0.5) / count, 0.5 / count);
        }
        return new PowerBend(parts.highest, parts.bend, parts.energy);
    }

    /**
     * The parts that stops are cut into, so that what changes abruptly, where a flow of power, a slider or a table turns, counts
     * only where in the stop that happens.
     */
    private final class Parts {

        private final StopStretch stretch;
        private final double time;
        private final double half;
        private final double lossPerTorqueSquared;
        private double highest = Double.NEGATIVE_INFINITY;
        private double bend;
        private double energy;

        private Parts(StopStretch stretch, double time, double half, double lossPerTorqueSquared) {
            this.stretch = stretch;
            this.time = time;
            this.half = half;
            this.lossPerTorqueSquared = lossPerTorqueSquared;
        }

        /** Where the power jumps, a part is halved until it is over about as soon as the jump has passed through all stops. */
        private void add(double share, double halfShare) {
            Enclosure taken = over(stretch, time, share, half, halfShare).power(lossPerTorqueSquared);
            if (taken.jumpsByX() && halfShare > Math.max(SHORTEST, half / duration)) {
                add(share - halfShare / 2, halfShare / 2);
                add(share + halfShare / 2, halfShare / 2);
                return;
            }
            double here = taken.bendByX(half);
            highest = Math.max(highest, -taken.low());
            bend = Math.max(bend, here);
            energy += here * 2 * halfShare * duration;
        }
    }
}
