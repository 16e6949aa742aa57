package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Inertia;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Temperature;
import io.axiswright.engine.quantity.TemperatureRise;
import io.axiswright.engine.quantity.Time;
import org.jspecify.annotations.Nullable;

/**
 * What the cycle does to the drive unit.
 *
 * @param motorInertia rotor, holding brake and coupling
 * @param reflectedInertia largest inertia of load, mechanism and gear at the motor shaft
 * @param inertiaRatio reflected inertia over motor inertia
 * @param inertiaRatioLimit the highest its control is tuned for
 * @param copperLoss mean copper loss, (T/Km)²
 * @param windingRise highest temperature rise of the winding over the repeating cycle
 * @param windingRiseAt when in the cycle
 * @param windingTemperature its temperature then, at the site's ambient and in its air
 * @param timeAtRmsTorque how long from cold the winding bears the rms torque; absent if for ever
 * @param timeAtPeakTorque how long from cold it bears the peak torque; absent if for ever
 * @param meanInputPower mean electrical input: shaft power, copper loss and standby loss while their sum is positive; what
 *     is returned is not credited
 * @param rmsInputPower root of the mean square of the same input
 * @param ratedInputCurrent its rated input current
 * @param cycleInputCurrent its rms input current over the cycle, never above the rated one
 */
public record UnitFigures(
        Inertia motorInertia,
        Inertia reflectedInertia,
        double inertiaRatio,
        double inertiaRatioLimit,
        Power copperLoss,
        TemperatureRise windingRise,
        Time windingRiseAt,
        Temperature windingTemperature,
        @Nullable Time timeAtRmsTorque,
        @Nullable Time timeAtPeakTorque,
        Power meanInputPower,
        Power rmsInputPower,
        Current ratedInputCurrent,
        Current cycleInputCurrent) {}
