package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A measured or planned course given by speeds over time, straight between the points.
 *
 * @param points times, rising, and speeds; only differences of time count
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("SPEED_COURSE")
public record SpeedCourse(
        @Count(min = 2, max = 2000) List<SpeedPoint> points,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
