package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import java.util.List;

/**
 * What conductors and devices must carry, by the code's rules for several loads; all in A.
 *
 * @param basis the code
 */
record DesignCurrents(CodeBasis basis) {

    /** A branch circuit: its largest motor load and every load without pause by their factors, the rest once. */
    double circuit(List<SupplyLoad> loads) {
        return together(loads, Rule.LARGEST_LOAD_FACTOR);
    }

    private double together(List<SupplyLoad> loads, Rule ofLargest) {
        return sum(loads)
                + (factor(ofLargest) - 1) * largestMotor(loads)
                + (factor(Rule.CONTINUOUS_FACTOR) - 1) * pauseless(loads);
    }

    /**
     * The feeder, from the loads on one line. North America, 430.24: as a branch circuit, so that the conductors of both follow
     * one rule (diversity needs the authority's leave, 430.26). IEC: what heats over the cycles, never below the largest load.
     */
    double feeder(List<SupplyLoad> onLine) {
        return switch (basis) {
            case NFPA_79 -> together(onLine, Rule.FEEDER_LARGEST_FACTOR);
            case IEC_60204_1 -> Math.max(factor(Rule.FEEDER_LARGEST_FACTOR) * largest(onLine), thermal(onLine));
        };
    }

    /** What heats something that feeds several loads: North America allows no diversity; IEC as for the feeder. */
    double heating(List<SupplyLoad> loads) {
        return switch (basis) {
            case NFPA_79 -> sum(loads);
            case IEC_60204_1 -> feeder(loads);
        };
    }

    /**
     * The cycle-thermal currents added up. The rms of a sum is never more than the sum of the rms values, so however the
     * cycles of the loads lie to each other, this holds; it is reached where all draw in proportion at the same time. Less where
     * courses that keep step are known.
     */
    static double thermal(List<SupplyLoad> loads) {
        return SharedTimeline.thermal(loads);
    }

    static double sum(List<SupplyLoad> loads) {
        return loads.stream().mapToDouble(SupplyLoad::rated).sum();
    }

    static double largest(List<SupplyLoad> loads) {
        return loads.stream().mapToDouble(SupplyLoad::rated).max().orElse(0);
    }

    /** The largest motor or drive. */
    static double largestMotor(List<SupplyLoad> loads) {
        return largest(loads.stream().filter(l -> !pauseless(l)).toList());
    }

    /** The loads without pause. */
    static double pauseless(List<SupplyLoad> loads) {
        return sum(loads.stream().filter(DesignCurrents::pauseless).toList());
    }

    private static boolean pauseless(SupplyLoad load) {
        return load.use() == LoadUse.CONTROL_SUPPLY;
    }

    private double factor(Rule rule) {
        return rule.under(basis).value();
    }
}
