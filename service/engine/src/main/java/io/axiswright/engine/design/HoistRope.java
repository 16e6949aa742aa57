package io.axiswright.engine.design;

import io.axiswright.engine.quantity.Bounds;
import io.axiswright.engine.quantity.Length;
import io.axiswright.engine.quantity.Mass;

/**
 * A rope heavy enough to count. Its weight goes from side to side, or onto the drum, as the load rises.
 *
 * @param mass mass of as much rope as the height is long
 * @param height how far the load can rise from its lowest place to the drum or sheave
 * @param start height of the load above its lowest place when the cycle begins
 * @param compensated whether a rope of the same kind hangs beneath from the load to the counterweight
 */
public record HoistRope(
        @Bounds(min = 0) Mass mass,
        @Bounds(above = 0, max = 2000) Length height,
        @Bounds(min = 0, max = 2000) Length start,
        boolean compensated) {}
