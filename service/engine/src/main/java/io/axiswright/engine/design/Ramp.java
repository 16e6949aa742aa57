package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Acceleration;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;
import org.jspecify.annotations.Nullable;

/**
 * A change from one speed to another: the lead-in to a run, or the lead-out; fixed by one of duration, distance and
 * acceleration.
 *
 * @param startSpeed speed at its start, signed; rest if absent
 * @param endSpeed speed at its end, signed; rest if absent
 * @param duration how long it lasts
 * @param distance how far it goes, signed
 * @param acceleration its highest acceleration or deceleration
 * @param jerkShare share of its time in which the acceleration builds up and dies down together; 0 if absent: an even ramp
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("RAMP")
public record Ramp(
        @Nullable Velocity startSpeed,
        @Nullable Velocity endSpeed,
        @Bounds(above = 0, max = 86400) @Nullable Time duration,
        @Nullable Displacement distance,
        @Bounds(above = 0) @Nullable Acceleration acceleration,
        @Bounds(min = 0, max = 1) @Nullable Double jerkShare,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
