package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;

/**
 * What a control supply gives beyond its rating for a short time, so that protection behind it opens.
 *
 * @param current the current
 * @param time for how long
 */
public record OverloadCurrent(
        @Bounds(above = 0) Current current,
        @Bounds(above = 0, max = 60) Time time) {}
