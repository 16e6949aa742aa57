package io.axiswright.engine.braking;

import java.util.List;

/**
 * All cases of one bus, with one braking unit or none.
 *
 * @param basis how the cycle was worked out
 * @param cases the cycle first, then the stops
 */
record GroupRun(CycleBasis basis, List<CaseOutcome> cases) {

    /** Whether the bus stays under its trip voltage in every case. */
    boolean fits(Bus bus) {
        return cases.stream().allMatch(c -> c.fits(bus));
    }

    /** The cycle case. */
    CaseOutcome cycle() {
        return cases.getFirst();
    }

    /** Highest energy of the bus in any case, J. */
    double peakEnergy() {
        return cases.stream().mapToDouble(CaseOutcome::peakEnergy).max().orElse(0);
    }

    /** Most energy into the resistor in any one stop, J. */
    double largestPulse() {
        return cases.stream().skip(1).mapToDouble(CaseOutcome::burned).max().orElse(0);
    }

    /** Highest temperature rise of the resistor in any case, K. */
    double peakRise() {
        return cases.stream().mapToDouble(CaseOutcome::peakRise).max().orElse(0);
    }
}
