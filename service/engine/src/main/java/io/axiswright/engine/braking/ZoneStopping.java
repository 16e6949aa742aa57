package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Angle;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one stop zone comes to rest.
 *
 * @param zone its id
 * @param stoppingTime reaction and deceleration time of a controlled stop; absent for category 0
 * @param axes how far each of its axes turns on; empty for category 0
 */
public record ZoneStopping(String zone, @Nullable Time stoppingTime, List<AxisStopping> axes) {

    /**
     * How far one axis turns on.
     *
     * @param axis its id
     * @param shaftAngle angle its motor shaft turns from the demand to rest, the longest of its stops
     */
    public record AxisStopping(String axis, Angle shaftAngle) {}

    /** Keeps the list from being changed. */
    public ZoneStopping {
        axes = List.copyOf(axes);
    }
}
