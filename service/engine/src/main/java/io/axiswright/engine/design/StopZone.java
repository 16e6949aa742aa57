package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The axes that one stop demand brings to rest together.
 *
 * @param id the caller's own name for it, unique in the design
 * @param category how they stop
 * @param reactionTime from the demand to the start of deceleration
 * @param decelerationTime from then to rest, for a controlled stop; every axis decelerates evenly over it
 * @param stopsPerHour how often it may have to stop in an hour, evenly spread, for the heat of braking resistors; 12 if absent
 */
public record StopZone(
        String id,
        StopCategory category,
        @Bounds(min = 0, max = 60) Time reactionTime,
        @Bounds(above = 0, max = 600) Time decelerationTime,
        @Bounds(min = 0, max = 3600) @Nullable Double stopsPerHour) {}
