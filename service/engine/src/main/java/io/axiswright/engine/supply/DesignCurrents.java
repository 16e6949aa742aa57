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
        double largestMotor = loads.stream()
                .filter(l -> !pauseless(l))
                .mapToDouble(SupplyLoad::rated)
                .max()
                .orElse(0);
        double pauseless = loads.stream()
                .filter(DesignCurrents::pauseless)
                .mapToDouble(SupplyLoad::rated)
                .sum();
        return sum(loads)
                + (factor(Rule.LARGEST_LOAD_FACTOR) - 1) * largestMotor
                + (factor(Rule.CONTINUOUS_FACTOR) - 1) * pauseless;
    }

    /**
     * The feeder, from the loads on one line. North America: the largest load by its factor and the others once
     * (diversity needs the authority's leave, 430.26). IEC: what heats over the cycles, never below the largest load.
     */
    double feeder(List<SupplyLoad> onLine) {
        return switch (basis) {
            case NFPA_79 -> sum(onLine) + (factor(Rule.FEEDER_LARGEST_FACTOR) - 1) * largest(onLine);
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
     * cycles of the loads lie to each other, this holds; it is reached where all draw in proportion at the same time.
     */
    static double thermal(List<SupplyLoad> loads) {
        return loads.stream().mapToDouble(l -> l.thermalCurrent().si()).sum();
    }

    static double sum(List<SupplyLoad> loads) {
        return loads.stream().mapToDouble(SupplyLoad::rated).sum();
    }

    static double largest(List<SupplyLoad> loads) {
        return loads.stream().mapToDouble(SupplyLoad::rated).max().orElse(0);
    }

    private static boolean pauseless(SupplyLoad load) {
        return load.use() == LoadUse.CONTROL_SUPPLY;
    }

    private double factor(Rule rule) {
        return rule.under(basis).value();
    }
}
