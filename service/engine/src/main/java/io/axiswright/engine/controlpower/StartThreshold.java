package io.axiswright.engine.controlpower;

import java.util.Comparator;
import java.util.List;

/**
 * A constant-power load as the output voltage rises from nothing: it takes no current below its threshold, P/V above.
 *
 * @param voltage the voltage it starts at, V
 * @param power what it takes from then on, W
 */
record StartThreshold(double voltage, double power) {

    /** What a chain's electronics do at start-up; its brakes are still off. */
    static List<StartThreshold> of(ChainNetwork network) {
        return network.terminals().stream()
                .map(terminal -> new StartThreshold(terminal.minimum(), terminal.power()))
                .toList();
    }

    /**
     * Largest current while the output rises: between thresholds ΣP/V falls, so it is largest at one of them. A
     * current-limited supply must give more, or its output stays below that threshold for ever. Drops along the cables are
     * left out; they only delay the start.
     */
    static double largestCurrent(List<StartThreshold> loads) {
        double largest = 0;
        double power = 0;
        List<StartThreshold> rising = loads.stream()
                .sorted(Comparator.comparingDouble(StartThreshold::voltage))
                .toList();
        for (StartThreshold load : rising) {
            power += load.power;
            // Of several that start at one voltage the last has them all.
            largest = Math.max(largest, power / load.voltage);
        }
        return largest;
    }
}
