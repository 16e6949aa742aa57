package io.axiswright.engine.catalogue;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Time;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A point of a protective device's time-current characteristic, on the slow side of its band.
 *
 * @param current any fault of at least this current is cleared within {@code time}
 * @param time longest clearing time from there on
 */
public record ClearingPoint(
        @Bounds(above = 0) Current current,
        @Bounds(above = 0, max = 3600) Time time) {

    /** The time within which a device with these points clears a fault of that current; absent where no point says so. */
    static @Nullable Time clearingTime(List<ClearingPoint> points, Current fault) {
        return points.stream()
                .filter(point -> point.current().si() <= fault.si())
                .map(ClearingPoint::time)
                .min(Comparator.comparingDouble(Time::si))
                .orElse(null);
    }

    /** The least current a device with these points clears within that time; absent where no point says so. */
    static @Nullable Current operatingCurrent(List<ClearingPoint> points, Time within) {
        return points.stream()
                .filter(point -> point.time().si() <= within.si())
                .map(ClearingPoint::current)
                .min(Comparator.comparingDouble(Current::si))
                .orElse(null);
    }
}
