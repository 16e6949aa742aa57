package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;

/**
 * The way from a control supply at a further place to a gateway.
 *
 * @param place id of the place, one of {@code controlPower.furtherPlaces}
 * @param length length of cable it needs
 */
public record SupplyWay(
        String place, @Bounds(min = 0, max = 1000) Length length) {}
