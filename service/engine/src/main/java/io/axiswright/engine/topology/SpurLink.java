package io.axiswright.engine.topology;

import io.axiswright.engine.quantity.Length;

/**
 * The cable from a gateway to a drive unit.
 *
 * @param axis id of the axis
 * @param cable id of the cable assembly
 * @param routeLength length the route asks for
 * @param cableLength length of the cable assembly
 */
public record SpurLink(String axis, String cable, Length routeLength, Length cableLength) {}
