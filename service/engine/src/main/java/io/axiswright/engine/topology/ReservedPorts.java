package io.axiswright.engine.topology;

import io.axiswright.engine.catalogue.CableExtension;
import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * Drive ports of a gateway that are kept for axes to come, and the spur cable that will serve each; it is not bought yet.
 *
 * @param id id of the reserved axes
 * @param ports how many of the gateway's ports are kept for them
 * @param cable id of the cable assembly
 * @param routeLength length the route asks for, at most
 * @param cableLength length of the cable assembly, of two joined together
 * @param extension what will lead on from that cable where no single one reaches; absent if it does
 */
public record ReservedPorts(
        String id,
        @Bounds(min = 1) int ports,
        String cable,
        Length routeLength,
        Length cableLength,
        @Nullable CableExtension extension) {}
