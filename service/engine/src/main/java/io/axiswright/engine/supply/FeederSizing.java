package io.axiswright.engine.supply;

import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Sizes the feeder on the line that asks most of it.
 *
 * @param request the whole request, its mains being what the feeder starts from
 * @param place where the feeder lies
 * @param mains what the mains offer
 * @param currents the code's design currents
 * @param devices the choice of protective devices; gathers findings
 * @param selectivity what the ratings tell of which device trips first
 */
record FeederSizing(
        SupplyRequest request,
        FeederPlace place,
        MainsLines mains,
        DesignCurrents currents,
        DeviceChoice devices,
        FeederSelectivity selectivity) {

    /** The feeder of these circuits. */
    Feeder of(List<LoadGroup> groups, List<BranchCircuit> circuits, List<Derivation> derivations) {
        int line = heaviestLine(groups, circuits);
        var on = onLine(line, groups, circuits);
        double design = currents.feeder(on);
        var ceiling = ceiling(line, design, groups, circuits);
        ceiling.ifPresent(c -> derivations.add(c.derivation()));
        var most = ceiling.map(FeederCeiling::rating).orElse(null);
        var plain = new DeviceStock.Ask(
                mains.whole().poles(request.codeBasis()),
                request.mains().voltage(),
                Math.max(design, selectivity.largestDevice()),
                Math.min(most == null ? Double.POSITIVE_INFINITY : most.si(), place.deviceLimit()),
                inrush(groups, circuits));
        var selective = plain.atLeast(selectivity.atLeast());
        // better a device that may trip too early than none
        var ask = devices.serves(selective) ? selective : plain;
        var choice = on.isEmpty() ? DeviceChoice.Choice.NONE : devices.choose(place.subject(), place.pointer(), ask);
        boolean neutral = mains.lines().size() == 1
                || circuits.stream().anyMatch(c -> c.connection() == Connection.LINE_TO_NEUTRAL);
        var neutralLoad = neutral ? NeutralLoad.of(place.id(), mains, currents, groups, circuits) : null;
        derivations.add(designDerivation(on, design));
        if (neutralLoad != null) {
            derivations.add(neutralLoad.derivation());
        }
        selectivity.derivation().ifPresent(derivations::add);
        Optional.ofNullable(choice.inrush())
                .flatMap(inrush -> inrush.derivation(place.id(), choice.rating()))
                .ifPresent(derivations::add);
        return new Feeder(
                mains.lines(),
                neutral,
                mains.lines().size() + (neutral ? 2 : 1),
                request.mains().voltage(),
                new Current(DesignCurrents.sum(on)),
                new Current(DesignCurrents.largest(on)),
                new Current(design),
                most,
                choice.device(),
                choice.rating(),
                ask.poles(),
                neutralLoad == null ? null : neutralLoad.current(),
                new Current(groups.stream().mapToDouble(LoadGroup::leakage).sum()),
                place.length(),
                choice.inrush());
    }

    /** On the line that meets most, in A; it need not be the one that carries most. */
    private double inrush(List<LoadGroup> groups, List<BranchCircuit> circuits) {
        return IntStream.range(0, mains.lines().size())
                .mapToDouble(line -> SupplyLoad.inrush(onLine(line, groups, circuits)))
                .max()
                .orElse(0);
    }

    private int heaviestLine(List<LoadGroup> groups, List<BranchCircuit> circuits) {
        double[] design = IntStream.range(0, mains.lines().size())
                .mapToDouble(line -> currents.feeder(onLine(line, groups, circuits)))
                .toArray();
        int heaviest = 0;
        for (int line = 1; line < design.length; line++) {
            heaviest = design[line] > design[heaviest] ? line : heaviest;
        }
        return heaviest;
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

    private Optional<FeederCeiling> ceiling(
            int line, double design, List<LoadGroup> groups, List<BranchCircuit> circuits) {
        var on = IntStream.range(0, circuits.size())
                .filter(k -> circuits.get(k).lines().contains(mains.lines().get(line)))
                .boxed()
                .toList();
        return switch (request.codeBasis()) {
            case NFPA_79 ->
                FeederCeiling.of(
                        place.id(),
                        request.installation().device(),
                        design,
                        on.stream().map(groups::get).toList(),
                        on.stream().map(circuits::get).toList());
            case IEC_60204_1 -> Optional.empty();
        };
    }

    private Derivation designDerivation(List<SupplyLoad> on, double design) {
        var rule = Rule.FEEDER_LARGEST_FACTOR.under(request.codeBasis());
        double motor = DesignCurrents.largestMotor(on);
        double pauseless = DesignCurrents.pauseless(on);
        double thermal = DesignCurrents.thermal(on);
        return switch (request.codeBasis()) {
            case NFPA_79 ->
                new Derivation(
                        place.id(),
                        "I_d",
                        "k (I_max + sum(I_continuous)) + sum(I_others)",
                        Derivation.inputs(
                                "k", new Ratio(rule.value()),
                                "I_max", new Current(motor),
                                "sum(I_continuous)", new Current(pauseless),
                                "sum(I_others)", new Current(DesignCurrents.sum(on) - motor - pauseless)),
                        rule.clause(),
                        new Current(design));
            case IEC_60204_1 ->
                new Derivation(
                        place.id(),
                        "I_d",
                        "max(k I_max, I_thermal)",
                        Derivation.inputs(
                                "k", new Ratio(rule.value()),
                                "I_max", new Current(DesignCurrents.largest(on)),
                                "I_thermal", new Current(thermal)),
                        rule.clause(),
                        new Current(design));
        };
    }
}
