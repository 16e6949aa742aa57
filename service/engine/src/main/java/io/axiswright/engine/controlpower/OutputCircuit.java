package io.axiswright.engine.controlpower;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * The 24 V output circuit of one chain, or of the part of it behind one feed point, and its protection.
 *
 * @param chain the chain
 * @param feedPoint id of the gateway at which its cable arrives
 * @param supply the control supply, by its name in this result
 * @param item catalogue id of its protection; absent if the catalogue has none
 * @param worstCurrent largest current it has to carry
 * @param farthest gateway, axis or field device at the end of the longest way, by resistance
 * @param loopResistance resistance of that way, there and back, hot, connectors included
 * @param faultCurrent current of a short circuit there: what the way lets through, and no more than the control supply gives
 *     beside its other circuits
 * @param clearingCurrent least current the protection is sure to clear in time; absent if it is sure of none
 * @param clearingTime within what time it clears the short circuit; absent if it is not sure to
 */
public record OutputCircuit(
        String chain,
        String feedPoint,
        String supply,
        @Nullable String item,
        Current worstCurrent,
        String farthest,
        Resistance loopResistance,
        Current faultCurrent,
        @Nullable Current clearingCurrent,
        @Nullable Time clearingTime) {}
