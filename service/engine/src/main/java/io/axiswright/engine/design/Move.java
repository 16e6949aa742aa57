package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * A motion from rest to rest.
 *
 * @param distance how far, signed; positive is up on inclined axes
 * @param duration how long it takes
 * @param law its course
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("MOVE")
public record Move(
        Displacement distance,
        @Bounds(above = 0, max = 86400) Time duration,
        MotionLaw law,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
