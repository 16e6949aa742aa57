package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * One DC bus in one case. The energies balance: returned − drawn + supplied − resistor = ½·C·(end² − start²).
 *
 * <p>Stops and loads running down meet a chopper at any phase of its switching. Their figures are those of one that switches
 * infinitely fast at its switch-on voltage, from a bus that already stands there: no phase lets the bus rise higher.
 *
 * <p>A cycle that returns more than the bus takes is followed until the trip voltage is passed; its peak is that of the cycle
 * in which this happens, as though the drives carried on. In a bound over all alignments of the axes, the peak has no instant
 * and the resistor's energy is the most it can be.
 *
 * @param kind what the bus is put through
 * @param zone id of the stop zone; only for its stop
 * @param criterion what the stop's instant is the worst for; only for stops, absent in a bound
 * @param duration length of the case; of one period for the cycle
 * @param startVoltage voltage at its start
 * @param endVoltage voltage at its end
 * @param peakVoltage highest voltage
 * @param peakInstant when, from the start of the case; absent for a bound
 * @param tripInstant when the trip voltage is first reached; absent if never
 * @param returnedEnergy energy the axes return while they return together more than they take
 * @param drawnEnergy energy they take while they take more than they return
 * @param suppliedEnergy energy the rectifier supplies
 * @param resistorEnergy energy into the resistor
 * @param meanResistorPower that energy over the duration
 * @param peakResistorPower power of the resistor at the highest voltage it conducts at; 0 if it never does
 * @param resistorTemperature highest temperature of the resistor; absent without a braking unit
 * @param worstInstant when in the common cycle the stop begins to decelerate; absent but for stops of axes whose cycles have a
 *     common period
 * @param provenVoltage no stop, whenever it begins, takes the bus higher than this; absent but for the stop from the instant
 *     from which the bus rises highest
 * @param alignment the worst alignment found of a stop of axes whose cycles have unrelated periods; absent otherwise
 * @param course the case over time; only where the request asks for courses, absent for a bound and for a bus that changes its
 *     state too often to be drawn
 */
public record BrakingCase(
        CaseKind kind,
        @Nullable String zone,
        @Nullable StopCriterion criterion,
        Time duration,
        Voltage startVoltage,
        Voltage endVoltage,
        Voltage peakVoltage,
        @Nullable Time peakInstant,
        @Nullable Time tripInstant,
        Energy returnedEnergy,
        Energy drawnEnergy,
        Energy suppliedEnergy,
        Energy resistorEnergy,
        Power meanResistorPower,
        Power peakResistorPower,
        @Nullable Temperature resistorTemperature,
        @Nullable Time worstInstant,
        @Nullable Voltage provenVoltage,
        @Nullable StopAlignment alignment,
        @Nullable BusCourse course) {}
