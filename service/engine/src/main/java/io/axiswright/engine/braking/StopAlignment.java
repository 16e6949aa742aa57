package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;

/**
 * The worst alignment found of a stop of axes whose cycles have unrelated periods. The bound over all alignments is the peak of
 * the case; what lies between was neither reached nor ruled out.
 *
 * @param peakVoltage highest voltage it leads to from the start of deceleration on, by exact simulation
 * @param gap how far the bound lies above it
 * @param phases where in their cycles the axes are when deceleration begins: those that stop, then those that go on
 */
public record StopAlignment(Voltage peakVoltage, Voltage gap, List<AxisPhase> phases) {

    /**
     * Where one axis is.
     *
     * @param axis its id
     * @param phase how far into its cycle
     */
    public record AxisPhase(String axis, Time phase) {}

    /** Keeps the list from being changed. */
    public StopAlignment {
        phases = List.copyOf(phases);
    }
}
