package io.axiswright.engine.mounting;

import io.axiswright.engine.catalogue.FasteningPart;
import io.axiswright.engine.catalogue.FootKit;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * Drive units to be mounted, and the parts to do it with.
 *
 * @param axes the axes whose mounting is stated
 * @param footKits foot kits to choose among
 * @param fasteningParts fastening parts to choose among
 */
public record MountingRequest(
        @Count(max = 1024) List<MountedAxis> axes, List<FootKit> footKits, List<FasteningPart> fasteningParts) {

    /** Keeps the lists from being changed. */
    public MountingRequest {
        axes = List.copyOf(axes);
        footKits = List.copyOf(footKits);
        fasteningParts = List.copyOf(fasteningParts);
    }
}
