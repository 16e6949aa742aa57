package io.axiswright.engine.harmonic;

import io.axiswright.engine.catalogue.RectifierInput;
import io.axiswright.engine.quantity.Capacitance;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;

/**
 * The rectifier of a drive unit.
 *
 * @param axis id of its axis
 * @param lines the lines it is connected to
 * @param voltage nominal voltage of its circuit
 * @param ratedVoltage rated voltage of the drive unit
 * @param ratedCurrent its rated input current
 * @param input its chokes
 * @param capacitance capacitance of its share of the DC bus
 * @param power mean power it draws over the cycles
 */
public record Rectifier(
        String axis,
        List<String> lines,
        Voltage voltage,
        Voltage ratedVoltage,
        Current ratedCurrent,
        RectifierInput input,
        Capacitance capacitance,
        Power power) {

    boolean threePhase() {
        return lines.size() == 3;
    }
}
