package io.axiswright.engine.braking;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All cases of one bus, with one braking unit or none.
 *
 * @param basis how the cycle was worked out
 * @param settling how the cycle that repeats was come to; absent for a bound
 * @param cases the cycle first, then the stops, then the others
 */
record GroupRun(CycleBasis basis, CycleOutcome.@Nullable Settling settling, List<CaseOutcome> cases) {

    /** Whether the bus stays under its trip voltage in every case. */
    boolean fits(Bus bus) {
        return cases.stream().allMatch(c -> c.fits(bus));
    }

    /** The cycle case. */
    CaseOutcome cycle() {
        return cases.getFirst();
    }

    /** Energy the bus is proven not to exceed in any case, J. */
    double peakEnergy() {
        return cases.stream().mapToDouble(CaseOutcome::provenEnergy).max().orElse(0);
    }

    /** Energy of the largest pulse of the resistor in any case, J. */
    double largestPulse() {
        return cases.stream().mapToDouble(CaseOutcome::pulse).max().orElse(0);
    }

    /** Most energy into the resistor in any one stop, J. */
    double largestStop() {
        return cases.stream()
                .filter(c -> c.kind() == CaseKind.STOP_ZONE || c.kind() == CaseKind.STOP_ALL)
                .mapToDouble(CaseOutcome::burned)
                .max()
                .orElse(0);
    }

    /** Highest mean power into the resistor in any cycle, W. */
    double meanBurned() {
        return cases.stream()
                .filter(c -> c.kind() == CaseKind.CYCLE || c.kind() == CaseKind.ZONE_AT_REST)
                .mapToDouble(CaseOutcome::meanBurned)
                .max()
                .orElse(0);
    }

    /** Highest temperature rise of the resistor in any cycle, K. */
    double cyclePeakRise() {
        return cases.stream()
                .filter(c -> c.kind() == CaseKind.CYCLE || c.kind() == CaseKind.ZONE_AT_REST)
                .mapToDouble(CaseOutcome::peakRise)
                .max()
                .orElse(0);
    }

    /** Energy the bus is proven not to exceed in any stop, J; 0 without stops. */
    double stopPeakEnergy() {
        return cases.stream()
                .filter(c -> c.kind() == CaseKind.STOP_ZONE || c.kind() == CaseKind.STOP_ALL)
                .mapToDouble(CaseOutcome::provenEnergy)
                .max()
                .orElse(0);
    }

    /** Highest power the axes return together in any case, W. */
    double peakPower() {
        return cases.stream().mapToDouble(CaseOutcome::peakPower).max().orElse(0);
    }

    /** Highest temperature rise of the resistor in any case, K. */
    double peakRise() {
        return cases.stream().mapToDouble(CaseOutcome::peakRise).max().orElse(0);
    }
}
