package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * Drive ports of a gateway that are kept for axes to come, and the spur cable that will serve each; it is not bought yet.
 *
 * @param id id of the reserved axes
 * @param ports how many of the gateway's ports are kept for them
 * @param cable id of the cable assembly
 * @param routeLength length the route asks for, at most
 * @param cableLength length of the cable assembly
 */
public record ReservedPorts(
        String id, @Bounds(min = 1) int ports, String cable, Length routeLength, Length cableLength) {}
