package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Velocity;
import org.jspecify.annotations.Nullable;

/**
 * From rest up to a speed, along at it, and to a stated stop.
 *
 * @param speed the speed, signed, not 0
 * @param starting even acceleration from rest, by one of its members
 * @param running at speed, by duration or distance
 * @param stopping even deceleration to rest, by one of its members
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("JOG")
public record Jog(
        Velocity speed,
        Leg starting,
        Leg running,
        Leg stopping,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
