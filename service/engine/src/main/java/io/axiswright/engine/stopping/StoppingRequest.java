package io.axiswright.engine.stopping;

import io.axiswright.engine.design.StopCategory;
import io.axiswright.engine.design.StopZone;
import java.util.List;

/**
 * What the stopping study takes.
 *
 * @param axes the axes with their cycles and brakes
 * @param zones the stop zones the axes name
 */
public record StoppingRequest(List<StoppingAxis> axes, List<StopZone> zones) {

    /** Keeps the lists from being changed. */
    public StoppingRequest {
        axes = List.copyOf(axes);
        zones = List.copyOf(zones);
    }

    /** The axes that stop with a zone. */
    List<StoppingAxis> axesIn(StopZone zone) {
        return axes.stream().filter(axis -> zone.id().equals(axis.stopZone())).toList();
    }

    /** Whether the stop zone of an axis takes its power away at once. */
    boolean uncontrolled(StoppingAxis axis) {
        return zones.stream()
                .anyMatch(zone -> zone.id().equals(axis.stopZone()) && zone.category() == StopCategory.CATEGORY_0);
    }
}
