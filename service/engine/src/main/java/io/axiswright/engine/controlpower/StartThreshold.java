package io.axiswright.engine.controlpower;

import java.util.Comparator;
import java.util.List;

/**
 * A load as the output voltage rises from nothing: it takes no current below its threshold, what it takes to start above.
 *
 * @param voltage the voltage it starts at, V
 * @param draw what it takes from then on
 */
record StartThreshold(double voltage, Draw draw) {

    /** What a chain's electronics do at start-up; its brakes are still off. */
    static List<StartThreshold> of(ChainNetwork network) {
        return network.terminals().stream()
                .map(terminal -> new StartThreshold(terminal.minimum(), terminal.starting()))
                .toList();
    }

    /**
     * Largest current while the output rises: between thresholds Σ (P/V + G V + I) is convex, so it is largest at one of them
     * or just before the next. A current-limited supply must give more, or its output stays below that threshold for ever. Drops along the cables are
     * left out; they only delay the start.
     */
    static double largestCurrent(List<StartThreshold> loads) {
        double largest = 0;
        Draw started = Draw.NOTHING;
        List<StartThreshold> rising = loads.stream()
                .sorted(Comparator.comparingDouble(StartThreshold::voltage))
                .toList();
        for (StartThreshold load : rising) {
            largest = Math.max(largest, started.at(load.voltage));
            started = started.plus(load.draw);
            // Of several that start at one voltage the last has them all.
            largest = Math.max(largest, started.at(load.voltage));
        }
        return largest;
    }
}
