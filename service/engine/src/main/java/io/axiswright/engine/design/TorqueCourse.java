package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Effort;
import io.axiswright.engine.quantity.Payload;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A measured or planned course given by speeds and efforts over time, straight between the points. The efforts take the
 * place of what the mechanism's load would ask for.
 *
 * @param points times, rising, with speeds and efforts; only differences of time count
 * @param at where both were taken
 * @param payload what is carried, for stops that interrupt the course; the efforts include it already
 */
@JsonTypeName("TORQUE_COURSE")
public record TorqueCourse(
        @Count(min = 2, max = 2000) List<TorquePoint> points,
        TorquePlace at,
        @Bounds(min = 0) @Nullable Payload payload)
        implements Segment {

    /** The efforts include it. */
    @Override
    public @Nullable Effort processEffort() {
        return null;
    }
}
