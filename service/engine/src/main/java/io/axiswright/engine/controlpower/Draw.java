package io.axiswright.engine.controlpower;

import io.axiswright.engine.design.FieldDevice;
import io.axiswright.engine.design.LoadLaw;

/**
 * What a point of the network takes: i = P/V + G V + I.
 *
 * @param power constant power P, W
 * @param conductance constant conductance G, S
 * @param current constant current I, A
 */
record Draw(double power, double conductance, double current) {

    static final Draw NOTHING = new Draw(0, 0, 0);

    static Draw ofPower(double power) {
        return new Draw(power, 0, 0);
    }

    static Draw ofConductance(double conductance) {
        return new Draw(0, conductance, 0);
    }

    static Draw ofCurrent(double current) {
        return new Draw(0, 0, current);
    }

    /** A device that states its current at 24 V. */
    static Draw of(FieldDevice device) {
        double current = device.current().si();
        LoadLaw law = device.law();
        return switch (law) {
            case CONSTANT_POWER -> ofPower(current * ControlConstants.NOMINAL);
            case CONSTANT_CURRENT -> ofCurrent(current);
            case RESISTIVE -> ofConductance(current / ControlConstants.NOMINAL);
        };
    }

    Draw plus(Draw other) {
        return new Draw(power + other.power, conductance + other.conductance, current + other.current);
    }

    /** Current at that voltage, A. */
    double at(double voltage) {
        return power / voltage + conductance * voltage + current;
    }
}
