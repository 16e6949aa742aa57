package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Any mechanism known by torque and inertia over the angle of its shaft: torque = J·a + J'·w²/2 + torque(angle), J' being the
 * slope of the inertia over the angle (Lagrange's equation).
 *
 * @param points torque and inertia at rising angles
 * @param interpolation the curves between the points
 * @param repeats whether the points repeat: the last, alike the first, is the first of the next turn
 * @param startAngle angle of the shaft when the cycle begins
 * @param friction torque of friction at the shaft, against the motion; none if absent
 */
@JsonTypeName("CUSTOM")
public record Custom(
        @Count(min = 2, max = 361) List<CustomPoint> points,
        TableInterpolation interpolation,
        boolean repeats,
        @Bounds(min = -100000, max = 100000) Angle startAngle,
        @Bounds(min = 0) @Nullable Torque friction)
        implements Mechanism {

    /** Keeps the points from being changed. */
    public Custom {
        points = List.copyOf(points);
    }
}
