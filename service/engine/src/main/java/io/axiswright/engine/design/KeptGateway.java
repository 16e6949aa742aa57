package io.axiswright.engine.design;

import io.axiswright.engine.quantity.AnyOrder;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Count;
import java.util.List;

/**
 * A gateway of a layout that is there already. What it names need no longer be in the design or in the catalogue: then the
 * answer says that it went.
 *
 * @param gatewayType id of its type
 * @param place id of the place where it stands
 * @param hostPort id of the host port its trunk starts from
 * @param depth its place in the trunk, 1 next to the host
 * @param axes ids of the axes on it
 */
public record KeptGateway(
        String gatewayType,
        String place,
        String hostPort,
        @Bounds(min = 1, max = 256) int depth,
        @AnyOrder @Count(max = 1024) List<String> axes) {

    /** Keeps the axes from being changed. */
    public KeptGateway {
        axes = List.copyOf(axes);
    }
}
