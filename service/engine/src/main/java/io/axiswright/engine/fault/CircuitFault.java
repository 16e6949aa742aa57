package io.axiswright.engine.fault;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.JouleIntegral;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What a circuit must stand in a fault, and whether it does.
 *
 * @param id the circuit
 * @param device item id of its protective device; absent if none was found
 * @param highestFault largest current its device may have to clear
 * @param interruptingRating largest current the device can clear
 * @param lowestFault smallest current of a fault at the far end of the circuit; absent where there are no conductors
 * @param loopImpedance earth-fault loop impedance (Z_s) at the far end, conductors hot; absent where not known
 * @param loopImpedanceLimit highest loop impedance at which the device clears in time; absent where no time is asked for, or
 *     the device's times are not stated
 * @param disconnectionTime longest time an earth fault may last; absent where the code asks for none
 * @param clearingTime longest time the device takes for an earth fault at the far end; absent where not known
 * @param letThrough most I²t its device lets through; absent where not known
 * @param withstand I²t its thinnest conductor stands, from its highest temperature in operation; absent where there is none
 */
public record CircuitFault(
        String id,
        @Nullable String device,
        Current highestFault,
        @Nullable Current interruptingRating,
        @Nullable Current lowestFault,
        @Nullable Resistance loopImpedance,
        @Nullable Resistance loopImpedanceLimit,
        @Nullable Time disconnectionTime,
        @Nullable Time clearingTime,
        @Nullable JouleIntegral letThrough,
        @Nullable JouleIntegral withstand) {}
