package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;

/**
 * What the 24 V DC control supply must meet.
 *
 * @param place id of the network place where the control supplies stand
 * @param reserve capacity to keep free, as a fraction of the load
 * @param brakesReleaseTogether whether all holding brakes may be released at the same moment
 */
public record ControlPower(
        String place, @Bounds(min = 0, max = 1) double reserve, boolean brakesReleaseTogether) {}
