package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeInfo;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import org.jspecify.annotations.Nullable;

/** A piece of a cycle. Each starts at the speed at which the one before ends, the first at that of the last. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
public sealed interface Segment permits Move, Dwell, Run, Ramp, Jog, PositionCourse, SpeedCourse, TorqueCourse {

    /** What is carried on top of the mechanism's load; nothing if absent. */
    @Nullable
    Payload payload();

    /** Force or torque the process exerts against the positive direction; none if absent. */
    @Nullable
    Effort processEffort();
}
