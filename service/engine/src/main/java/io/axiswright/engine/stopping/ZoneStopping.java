package io.axiswright.engine.stopping;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.quantity.Time;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one stop zone comes to rest.
 *
 * @param zone its id
 * @param category how it stops
 * @param stoppingTime from the demand until its slowest axis rests; absent if one never does
 * @param axes each of its axes
 * @param safeguards how far each of its safeguards has to be from the hazard
 */
public record ZoneStopping(
        String zone,
        StopCategory category,
        @Nullable Time stoppingTime,
        List<AxisStopping> axes,
        List<SafeguardDistance> safeguards) {

    /** Keeps the lists from being changed. */
    public ZoneStopping {
        axes = List.copyOf(axes);
        safeguards = List.copyOf(safeguards);
    }
}
