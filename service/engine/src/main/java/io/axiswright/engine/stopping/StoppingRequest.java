package io.axiswright.engine.stopping;

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
}
