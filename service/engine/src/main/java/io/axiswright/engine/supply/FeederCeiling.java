package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.DeviceKind;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.MotorDevices;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The highest feeder device that NFPA 70 430.62 allows: the largest device of a motor circuit, taken as what 430.52 permits its
 * motors, plus the currents of all other loads, rounded down; 430.63 counts loads without pause by 125 %. Conductors for the next
 * standard rating above the design current allow that rating in any case (430.62(B)).
 *
 * @param rating the highest rating
 * @param derivation how it came about
 */
record FeederCeiling(Current rating, Derivation derivation) {

    private static final double CONTINUOUS =
            Rule.CONTINUOUS_FACTOR.under(CodeBasis.NFPA_79).value();

    /** The ceiling from the circuits on one line and their loads; none where no motor or drive is on it. */
    static Optional<FeederCeiling> of(
            String feeder, DeviceKind kind, double design, List<LoadGroup> groups, List<BranchCircuit> circuits) {
        return IntStream.range(0, circuits.size())
                .filter(k -> circuits.get(k).use() != LoadUse.CONTROL_SUPPLY)
                .boxed()
                .max(Comparator.<Integer>comparingDouble(k -> permitted(kind, circuits.get(k)))
                        .thenComparing(Comparator.reverseOrder()))
                .flatMap(largest -> of(feeder, kind, design, largest, groups, circuits));
    }

    private static Optional<FeederCeiling> of(
            String feeder,
            DeviceKind kind,
            double design,
            int largest,
            List<LoadGroup> groups,
            List<BranchCircuit> circuits) {
        double device = permitted(kind, circuits.get(largest));
        double others = IntStream.range(0, circuits.size())
                .filter(k -> k != largest)
                .mapToObj(k -> groups.get(k).loads())
                .mapToDouble(loads -> DesignCurrents.sum(loads) + (CONTINUOUS - 1) * DesignCurrents.pauseless(loads))
                .sum();
        var down = DeviceRatings.nextDown(CodeBasis.NFPA_79, kind, new Current(device + others));
        var conductors = DeviceRatings.nextUp(CodeBasis.NFPA_79, kind, new Current(design));
        return down.or(() -> conductors)
                .map(rating -> conductors
                        .filter(up -> up.value().si() > rating.value().si())
                        .orElse(rating))
                .map(rating -> new FeederCeiling(
                        rating.value(),
                        new Derivation(
                                feeder,
                                "I_n,max",
                                "max(largest standard rating <= I_n,branch + sum(I_others), next rating >= I_d)",
                                Derivation.inputs(
                                        "I_n,branch", new Current(device),
                                        "sum(I_others)", new Current(others),
                                        "I_d", new Current(design)),
                                "NFPA 70 430.62, 430.63",
                                rating.value())));
    }

    /** By 430.52 and the loads' own instructions (430.130), whichever is lower; not below the device the circuit has. */
    private static double permitted(DeviceKind kind, BranchCircuit circuit) {
        double largest = circuit.largestLoad().si();
        double byCode = MotorDevices.permitted(kind, largest, circuit.current().si() - largest)
                .orElse(DeviceRatings.of(CodeBasis.NFPA_79, kind)
                        .getLast()
                        .value()
                        .si());
        Current stated = circuit.deviceLimit();
        Current has = circuit.deviceRating();
        return Math.max(
                Math.min(byCode, stated == null ? Double.POSITIVE_INFINITY : stated.si()), has == null ? 0 : has.si());
    }
}
