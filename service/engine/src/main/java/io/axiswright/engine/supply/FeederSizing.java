package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.standard.DeviceRatings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Sizes the feeder on the line that asks most of it.
 *
 * @param request the whole request
 * @param mains what the mains offer
 * @param currents the code's design currents
 * @param devices the choice of protective devices; gathers findings
 */
record FeederSizing(SupplyRequest request, MainsLines mains, DesignCurrents currents, DeviceChoice devices) {

    private static final String CEILING = "NFPA 70 430.62(A)";

    /** The feeder of these circuits. */
    Feeder of(List<LoadGroup> groups, List<BranchCircuit> circuits, List<Derivation> derivations) {
        int line = heaviestLine(groups, circuits);
        var on = onLine(line, groups, circuits);
        double design = currents.feeder(on);
        var ceiling = ceiling(line, groups, circuits, derivations);
        var selectivity = new FeederSelectivity(request, circuits);
        var plain = new DeviceStock.Ask(
                mains.whole().poles(request.codeBasis()),
                request.mains().voltage(),
                Math.max(design, selectivity.largestDevice()),
                ceiling == null ? Double.POSITIVE_INFINITY : ceiling.si());
        var selective = plain.atLeast(selectivity.atLeast());
        // better a device that may trip too early than none
        var ask = devices.serves(selective) ? selective : plain;
        var choice = on.isEmpty() ? DeviceChoice.Choice.NONE : devices.choose("the feeder", Feeder.POINTER, ask);
        boolean neutral = mains.lines().size() == 1
                || circuits.stream().anyMatch(c -> c.connection() == Connection.LINE_TO_NEUTRAL);
        derivations.add(designDerivation(on, design));
        selectivity.derivation().ifPresent(derivations::add);
        return new Feeder(
                mains.lines(),
                neutral,
                mains.lines().size() + (neutral ? 2 : 1),
                request.mains().voltage(),
                new Current(DesignCurrents.sum(on)),
                new Current(DesignCurrents.largest(on)),
                new Current(design),
                ceiling,
                choice.device(),
                choice.rating(),
                ask.poles(),
                new Current(groups.stream().mapToDouble(LoadGroup::leakage).sum()),
                request.installation().feederLength());
    }

    private int heaviestLine(List<LoadGroup> groups, List<BranchCircuit> circuits) {
        return IntStream.range(0, mains.lines().size())
                .boxed()
                .max(Comparator.<Integer>comparingDouble(l -> currents.feeder(onLine(l, groups, circuits)))
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
    }

    private List<SupplyLoad> onLine(int line, List<LoadGroup> groups, List<BranchCircuit> circuits) {
        var loads = new ArrayList<SupplyLoad>();
        for (int k = 0; k < groups.size(); k++) {
            if (circuits.get(k).lines().contains(mains.lines().get(line))) {
                loads.addAll(groups.get(k).loads());
            }
        }
        return loads;
    }

    /**
     * North America: the largest device any branch circuit on the line may have, plus the currents of the others, rounded
     * down. IEC sets no ceiling; the conductors do.
     */
    private @Nullable Current ceiling(
            int line, List<LoadGroup> groups, List<BranchCircuit> circuits, List<Derivation> derivations) {
        if (request.codeBasis() == CodeBasis.IEC_60204_1) {
            return null;
        }
        var on = IntStream.range(0, circuits.size())
                .filter(k -> circuits.get(k).lines().contains(mains.lines().get(line)))
                .boxed()
                .toList();
        var largest = on.stream()
                .max(Comparator.<Integer>comparingDouble(k -> permitted(circuits.get(k)))
                        .thenComparing(Comparator.reverseOrder()));
        if (largest.isEmpty()) {
            return null;
        }
        double device = permitted(circuits.get(largest.get()));
        double others = on.stream()
                .filter(k -> !k.equals(largest.get()))
                .mapToDouble(k -> DesignCurrents.sum(groups.get(k).loads()))
                .sum();
        var rounded = DeviceRatings.nextDown(
                request.codeBasis(), request.installation().device(), new Current(device + others));
        rounded.ifPresent(rating -> derivations.add(new Derivation(
                "feeder",
                "I_n,max",
                "largest standard rating <= I_n,branch + sum(I_others)",
                Derivation.inputs("I_n,branch", new Current(device), "sum(I_others)", new Current(others)),
                CEILING,
                rating.value())));
        return rounded.map(rating -> rating.value()).orElse(null);
    }

    private static double permitted(BranchCircuit circuit) {
        var limit = circuit.deviceLimit() != null ? circuit.deviceLimit() : circuit.deviceRating();
        return limit == null ? 0 : limit.si();
    }

    private Derivation designDerivation(List<SupplyLoad> on, double design) {
        var rule = Rule.FEEDER_LARGEST_FACTOR.under(request.codeBasis());
        double thermal = DesignCurrents.thermal(on);
        var largest = new Current(DesignCurrents.largest(on));
        return switch (request.codeBasis()) {
            case NFPA_79 ->
                new Derivation(
                        "feeder",
                        "I_d",
                        "k I_max + sum(I_others)",
                        Derivation.inputs(
                                "k", new Ratio(rule.value()),
                                "I_max", largest,
                                "sum(I_others)", new Current(DesignCurrents.sum(on) - largest.si())),
                        rule.clause(),
                        new Current(design));
            case IEC_60204_1 ->
                new Derivation(
                        "feeder",
                        "I_d",
                        "max(k I_max, sum(I_thermal))",
                        Derivation.inputs(
                                "k", new Ratio(rule.value()),
                                "I_max", largest,
                                "sum(I_thermal)", new Current(thermal)),
                        rule.clause(),
                        new Current(design));
        };
    }
}
