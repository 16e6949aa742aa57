package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Displacement;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Velocity;
import org.jspecify.annotations.Nullable;

/**
 * A motion at constant speed; fixed by duration or distance, not both.
 *
 * @param speed its speed, signed, not 0
 * @param duration how long it lasts
 * @param distance how far it goes, signed like the speed
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("RUN")
public record Run(
        Velocity speed,
        @Bounds(above = 0, max = 86400) @Nullable Time duration,
        @Nullable Displacement distance,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
