package io.axiswright.engine.controlpower;

import io.axiswright.engine.catalogue.ControlSupply;

/**
 * Between what voltages a control supply's output lies.
 *
 * @param low its set output less its regulation, V: decides voltages and the current of constant-power loads
 * @param high its set output, V: decides the current of brakes
 */
record SourceVoltages(double low, double high) {

    /** Whether low and high are the same. */
    boolean isOne() {
        return low == high;
    }

    static SourceVoltages of(ControlSupply supply) {
        double output = supply.outputVoltage().si();
        return new SourceVoltages(output * (1 - supply.regulation()), output);
    }
}
