package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Acceleration;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Jerk;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;
import org.jspecify.annotations.Nullable;

/**
 * A motion from rest to rest, fixed by any two of distance, duration, top speed, acceleration and jerk once the law's shape is
 * known, or by as many more as the law leaves shares open. What is stated beyond that must agree with the rest.
 *
 * @param distance how far, signed; positive is up on inclined axes
 * @param duration how long it takes
 * @param law its course
 * @param topSpeed highest speed; signed like the distance, and giving the direction where no distance is stated. Of a
 *     trapezoid or S-curve by accelerations it is a limit: a move too short for it stays below
 * @param acceleration highest acceleration
 * @param deceleration highest deceleration; that of the other end unless the law has a share for it
 * @param jerk highest jerk, of laws whose acceleration does not jump
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("MOVE")
public record Move(
        @Nullable Displacement distance,
        @Bounds(above = 0, max = 86400) @Nullable Time duration,
        MotionLaw law,
        @Nullable Velocity topSpeed,
        @Bounds(above = 0) @Nullable Acceleration acceleration,
        @Bounds(above = 0) @Nullable Acceleration deceleration,
        @Bounds(above = 0) @Nullable Jerk jerk,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {

    /** A move by distance and duration. */
    public Move(
            Displacement distance,
            Time duration,
            MotionLaw law,
            @Nullable Payload payload,
            @Nullable Effort processEffort) {
        this(distance, duration, law, null, null, null, null, payload, processEffort);
    }
}
