package io.axiswright.engine.duty;

import io.axiswright.engine.quantity.AngularSpeed;
import io.axiswright.engine.quantity.Energy;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Torque;

/**
 * What the cycle comes to at the motor shaft.
 *
 * @param cyclePeriod how long the cycle lasts
 * @param peakTorque greatest magnitude of torque
 * @param peakTorqueAt when
 * @param rmsTorque square root of the mean of the torque squared, standstill included
 * @param meanSpeed mean magnitude of speed
 * @param rmsSpeed square root of the mean of the speed squared
 * @param peakSpeed greatest magnitude of speed
 * @param peakSpeedAt when
 * @param peakMotoringPower greatest power the motor gives to the shaft
 * @param peakMotoringPowerAt when
 * @param peakReturnedPower greatest power the shaft gives back, as a magnitude; 0 if it never does
 * @param peakReturnedPowerAt when
 * @param meanPower mean power given to the shaft, less what comes back
 * @param motoredEnergy energy given to the shaft in a cycle
 * @param returnedEnergy energy given back by the shaft in a cycle, as a magnitude
 * @param holdingTorque largest torque a brake on the motor shaft may have to hold, friction not counted on
 */
public record DutyFigures(
        Time cyclePeriod,
        Torque peakTorque,
        Time peakTorqueAt,
        Torque rmsTorque,
        AngularSpeed meanSpeed,
        AngularSpeed rmsSpeed,
        AngularSpeed peakSpeed,
        Time peakSpeedAt,
        Power peakMotoringPower,
        Time peakMotoringPowerAt,
        Power peakReturnedPower,
        Time peakReturnedPowerAt,
        Power meanPower,
        Energy motoredEnergy,
        Energy returnedEnergy,
        Torque holdingTorque) {}
