package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The axes that one stop demand brings to rest together.
 *
 * @param id the caller's own name for it, unique in the design
 * @param category how they stop
 * @param reactionTime from the demand to the start of deceleration
 * @param decelerationTime from then to rest, for a controlled stop; every axis decelerates evenly over it
 * @param stopsPerHour how often it may have to stop in an hour, evenly spread, for the heat of braking resistors; 12 if absent
 * @param safeguards what demands the stop when somebody comes near; none if absent
 */
public record StopZone(
        String id,
        StopCategory category,
        @Bounds(min = 0, max = 60) Time reactionTime,
        @Bounds(above = 0, max = 600) Time decelerationTime,
        @Bounds(min = 0, max = 3600) @Nullable Double stopsPerHour,
        @Count(max = 64) @Nullable List<Safeguard> safeguards) {

    /** Keeps the safeguards from being changed. */
    public StopZone {
        safeguards = safeguards == null ? null : List.copyOf(safeguards);
    }

    /** A zone without safeguards. */
    public StopZone(
            String id, StopCategory category, Time reactionTime, Time decelerationTime, @Nullable Double stopsPerHour) {
        this(id, category, reactionTime, decelerationTime, stopsPerHour, null);
    }

    /** Its safeguards; empty if it has none. */
    List<Safeguard> safeguardList() {
        return safeguards == null ? List.of() : safeguards;
    }

    /**
     * From the demand of a controlled stop to rest: reaction and deceleration; absent for category 0, which follows no plan.
     */
    public @Nullable Time plannedStop() {
        return category == StopCategory.CATEGORY_0 ? null : new Time(reactionTime.si() + decelerationTime.si());
    }
}
