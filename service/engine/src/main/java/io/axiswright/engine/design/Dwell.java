package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * A standstill.
 *
 * @param duration how long it lasts
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 * @param brakeHolds whether the holding brake, not the motor, holds the load
 */
@JsonTypeName("DWELL")
public record Dwell(
        @Bounds(above = 0, max = 86400) Time duration,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort,
        boolean brakeHolds)
        implements Segment {}
