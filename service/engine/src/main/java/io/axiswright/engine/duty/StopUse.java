package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;

/**
 * What a controlled stop uses of the intermittent curve.
 *
 * @param stop the stop
 * @param worst its worst instant
 */
record StopUse(HardestStop stop, Envelope worst) {

    LimitUse limit() {
        return new LimitUse(
                DutyLimit.INTERMITTENT,
                new Torque(worst.torque()),
                new Torque(worst.available()),
                worst.use(),
                new Time(stop.instant()));
    }
}
