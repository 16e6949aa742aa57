package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * What one DC bus comes to at one line voltage. The higher the line, the less the capacitors take and the higher every peak:
 * high line decides.
 *
 * @param line where the mains stands
 * @param floorVoltage rectified voltage
 * @param cyclePeakVoltage highest voltage in the cycle
 * @param stopPeakVoltage no stop, begun at whatever instant is the worst at this line, lifts the bus above this; absent without stops
 * @param meanResistorPower mean power into the resistors over the cycle
 */
public record LineOutcome(
        SupplyLine line,
        Voltage floorVoltage,
        Voltage cyclePeakVoltage,
        @Nullable Voltage stopPeakVoltage,
        Power meanResistorPower) {}
