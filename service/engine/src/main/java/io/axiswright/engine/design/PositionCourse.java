package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import io.axiswright.engine.quantity.Velocity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A measured or planned course given by positions over time.
 *
 * @param points times, rising, and positions; only differences count
 * @param interpolation the curve through the points
 * @param startSpeed speed at the first point, signed; rest if absent
 * @param endSpeed speed at the last point, signed; rest if absent
 * @param payload what is carried on top of the mechanism's load; none if absent
 * @param processEffort force or torque the process exerts against the positive direction; none if absent
 */
@JsonTypeName("POSITION_COURSE")
public record PositionCourse(
        @Count(min = 2, max = 2000) List<PositionPoint> points,
        Interpolation interpolation,
        @Nullable Velocity startSpeed,
        @Nullable Velocity endSpeed,
        @Bounds(min = 0) @Nullable Payload payload,
        @Nullable Effort processEffort)
        implements Segment {}
