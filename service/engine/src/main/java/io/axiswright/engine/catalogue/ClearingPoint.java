package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;

/**
 * A point of a protective device's time-current characteristic, on the slow side of its band.
 *
 * @param current any fault of at least this current is cleared within {@code time}
 * @param time longest clearing time from there on
 */
public record ClearingPoint(
        @Bounds(above = 0) Current current,
        @Bounds(above = 0, max = 3600) Time time) {}
