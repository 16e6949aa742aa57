package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.CoastLoad;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The worst stops of an axis without motor torque, each by its own measure.
 *
 * @param stopping what they come to
 * @param starts where they start; absent if it never rests or never moves
 */
record WorstStops(AxisStopping stopping, @Nullable Starts starts) {

    /**
     * Where they start.
     *
     * @param longest the one that takes longest
     * @param farthest the one that goes farthest
     * @param hottest the one that costs the brake most; absent if none costs anything
     * @param hardest the one that loads the gear unit most; absent without gear unit
     */
    record Starts(
            Start longest,
            Start farthest,
            @Nullable Start hottest,
            @Nullable GearStart hardest) {}

    /** A load and the speed of the motor shaft at power-off, rad/s. */
    record Start(CoastLoad load, double speed) {

        /** The stop from there, event by event. */
        List<CoastPhase> phases(BrakeAction brake) {
            return CoastRun.phases(load, speed, brake);
        }
    }

    /** A braked motion and the speed of it at which the gear unit bears most, rad/s. */
    record GearStart(Freewheel braking, double speed) {}
}
