package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Within which times a stop zone could decelerate without any braking unit for it, whenever the stop begins. There may be two
 * ranges: a stop so hard that the motors burn all in their windings returns nothing, one so long that the drives' own loss takes
 * it returns little, and what lies between lifts the bus. Only the bus is judged here: whether the drive units have the torque is
 * told by the duty.
 *
 * @param zone id of the stop zone
 * @param ranges the ranges, shortest times first; empty if no time tried does. Times from {@value UnaidedStops#FARTHEST} times
 *     shorter to as much longer than the one asked for are tried, each half as long again as the one before, and the ends of the
 *     ranges between them refined; a range narrower than that may be missed
 */
public record UnaidedStop(String zone, List<Range> ranges) {

    /**
     * Deceleration times that need no braking unit.
     *
     * @param shortest the shortest; absent if the shortest tried still does
     * @param longest the longest; absent if the longest tried still does
     */
    public record Range(@Nullable Time shortest, @Nullable Time longest) {}

    /** Keeps the list from being changed. */
    public UnaidedStop {
        ranges = List.copyOf(ranges);
    }
}
