package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;

/**
 * Where gateways may stand: a panel or a spot on the frame.
 *
 * @param id its name, unique in the design
 * @param position where it is
 * @param maxGateways how many gateways fit
 */
public record Place(
        String id,
        Position position,
        @Bounds(min = 1, max = 64) int maxGateways) {}
