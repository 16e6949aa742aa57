package io.axiswright.engine.duty;

import io.axiswright.engine.design.Axis;
import io.axiswright.engine.design.StopZone;
import org.jspecify.annotations.Nullable;

/**
 * What the output shaft of a gear unit at the motor bears. It depends on what lies beyond it only, so it is the same for every
 * gear unit and every motor. The hardest stop is looked for only if somebody asks.
 */
final class GearOutput {

    private final AxisLoad load;
    private final LoadSums sums;
    private final @Nullable StopZone zone;
    private final double inertia;
    private final double peak;
    private @Nullable HardestStop stop;

    private GearOutput(AxisLoad load, @Nullable StopZone zone) {
        this.load = load;
        this.zone = zone;
        sums = LoadSums.of(load.pieces(), load.period());
        inertia = load.drivetrain().gearInertia();
        peak = Math.max(load.holdingTorque(), StopMeasure.highest(load.course(inertia)));
    }

    /**
     * Of an axis without the gear unit. A load that a brake at the motor holds hangs on the gear unit all the same, so the brake
     * is left out; losses that would help to hold it are not counted on.
     *
     * @param zone the zone whose controlled stop it makes; none if absent
     */
    static GearOutput of(Axis axis, @Nullable StopZone zone, CycleChange change) {
        return new GearOutput(AxisLoad.of(axis.with(axis.drive().withoutBrake()), change), zone);
    }

    /** What it carries. */
    AxisLoad load() {
        return load;
    }

    /** Integrals of that over the cycle. */
    LoadSums sums() {
        return sums;
    }

    /** Inertia of what turns with it, kg·m². */
    double inertia() {
        return inertia;
    }

    /** The greatest torque in the cycle, N·m. */
    double peak() {
        return peak;
    }

    /** The rms torque over the cycle, N·m. */
    double rms() {
        return sums.rmsTorque(inertia);
    }

    /** The greatest torque in a controlled stop, N·m; 0 if it makes none. */
    double stop() {
        return hardest().size();
    }

    /** When in the cycle that stop begins, s. */
    double stopInstant() {
        return hardest().instant();
    }

    /** Whether {@link #stop} is greater than a torque, N·m; mostly told long before that one is found. */
    boolean stopExceeds(double torque) {
        if (stop != null) {
            return stop.size() > torque;
        }
        Boolean plain = HardestStop.exceeds(load, inertia, zone, torque);
        return plain != null ? plain : stop() > torque;
    }

    /** That stop; of no size if it makes none. */
    HardestStop hardest() {
        if (stop == null) {
            stop = HardestStop.of(load, sums.peakSpeed(), inertia, zone, StopMeasure.TORQUE);
        }
        return stop;
    }
}
