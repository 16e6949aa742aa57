package io.axiswright.engine.stopping;

import io.axiswright.engine.duty.Coasting;
import io.axiswright.engine.quantity.Time;

/**
 * A stop of category 1 or 2: an even deceleration to rest within the zone's time, whatever the speed.
 *
 * @param axis the axis
 * @param duration the zone's deceleration time, s
 */
record ControlledStop(StoppingAxis axis, double duration) implements Stopping {

    @Override
    public double path(Coasting.Piece piece, double speed) {
        return Math.abs(speed) * duration / 2;
    }

    @Override
    public double bound(Coasting.Piece piece, double low, double high) {
        return Math.max(Math.abs(low), Math.abs(high)) * duration / 2;
    }

    /** The worst stop, the axis running on for a reaction time in s first; nothing is known of one its drive unit cannot make. */
    AxisStopping worst(double reaction) {
        if (axis.stopTooHard()) {
            return AxisStopping.unknown(axis.id());
        }
        FarthestStop farthest = FarthestStop.of(SpeedCourse.of(axis.coasting()), reaction, this);
        var load = new LoadSide(axis.coasting());
        return new AxisStopping(
                axis.id(),
                new Time(reaction + duration),
                load.displacement(farthest.angle()),
                load.displacement(farthest.bound()),
                new Time(farthest.instant()),
                null,
                null,
                null);
    }
}
