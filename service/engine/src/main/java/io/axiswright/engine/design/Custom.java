package io.axiswright.engine.design;

import com.fasterxml.jackson.annotation.JsonTypeName;
import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import io.axiswright.engine.quantity.RotaryDamping;
import io.axiswright.engine.quantity.Torque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Any mechanism known by torque and inertia, over the angle of its shaft or over the time of its cycle.
 *
 * <p>Over the angle, torque = J·a + J'·w²/2 + torque(angle), J' being the slope of the inertia over the angle (Lagrange's
 * equation): the motion itself changes the inertia.
 *
 * <p>Over time, torque = J·a + dJ/dt·w + torque(time) (balance of angular momentum): an actuator of its own moves masses on the
 * turning shaft in or out, or the shaft takes up what stood still. Of the power dJ/dt·w² half becomes kinetic energy; the other
 * half goes to that actuator, or is lost in the slip of what is brought up to speed, and where the inertia falls the actuator
 * gives it. What comes or goes with the speed of the shaft asks for no such torque: state it as payload of segments. Between
 * instants both change evenly; before the first and after the last they stay. Segments made longer or shorter take their part
 * of the course with them. In a stop torque and inertia stay what they were when it began.
 *
 * @param points torque and inertia at rising angles; required without instants
 * @param interpolation the curves between the points; straight lines if absent. None with instants
 * @param repeats whether the points repeat: the last, alike the first, is the first of the next turn; false if absent. None with
 *     instants
 * @param startAngle angle of the shaft when the cycle begins; 0 if absent. None with instants
 * @param friction torque of friction at the shaft, against the motion; none if absent
 * @param viscousFriction friction torque per speed of the shaft; none if absent
 * @param instants torque and inertia at rising times of the cycle, instead of points
 */
@JsonTypeName("CUSTOM")
public record Custom(
        @Count(min = 2, max = 361) @Nullable List<CustomPoint> points,
        @Nullable TableInterpolation interpolation,
        @Nullable Boolean repeats,
        @Bounds(min = -100000, max = 100000) @Nullable Angle startAngle,
        @Bounds(min = 0) @Nullable Torque friction,
        @Bounds(min = 0) @Nullable RotaryDamping viscousFriction,
        @Count(min = 2, max = 361) @Nullable List<CustomInstant> instants)
        implements Mechanism {

    /** Known over the angle, without viscous friction. */
    public Custom(
            List<CustomPoint> points,
            TableInterpolation interpolation,
            boolean repeats,
            Angle startAngle,
            @Nullable Torque friction) {
        this(points, interpolation, repeats, startAngle, friction, null, null);
    }

    /** Known over time. */
    public Custom(List<CustomInstant> instants, @Nullable Torque friction, @Nullable RotaryDamping viscousFriction) {
        this(null, null, null, null, friction, viscousFriction, instants);
    }

    /** Keeps the points from being changed. */
    public Custom {
        points = points == null ? null : List.copyOf(points);
        instants = instants == null ? null : List.copyOf(instants);
    }

    /** Whether its points are the same turn after turn. */
    public boolean turns() {
        return Boolean.TRUE.equals(repeats);
    }

    /** The angle of its shaft when the cycle begins, rad. */
    public double start() {
        return startAngle == null ? 0 : startAngle.si();
    }
}
