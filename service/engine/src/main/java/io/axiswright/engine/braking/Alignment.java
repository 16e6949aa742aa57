package io.axiswright.engine.braking;

import io.axiswright.engine.quantity.Time;
import io.axiswright.engine.quantity.Voltage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The worst alignment found of axes whose cycles have unrelated periods. The bound over all alignments is the peak of the cycle
 * case; what lies between was neither reached nor ruled out.
 *
 * @param peakVoltage highest voltage it leads to, by exact simulation
 * @param gap how far the bound lies above it
 * @param phases by moving axis, in order: how far into its cycle it is when the first is at its start
 * @param course the bus under it, from the rectifier's voltage through one turn of the longest cycle to those phases, and one more,
 *     with the chopper as it switches; only where the request asks for courses
 */
public record Alignment(
        Voltage peakVoltage,
        Voltage gap,
        List<Time> phases,
        @Nullable BusCourse course) {

    /** Keeps the list from being changed. */
    public Alignment {
        phases = List.copyOf(phases);
    }
}
