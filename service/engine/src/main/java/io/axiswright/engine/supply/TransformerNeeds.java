package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Voltage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** One transformer for each voltage the mains lack. */
final class TransformerNeeds {

    private record Secondary(Feed feed, double volts) {}

    private TransformerNeeds() {}

    static List<TransformerNeed> of(List<SupplyLoad> misfits, Mains mains, List<Derivation> derivations) {
        var order = Comparator.comparing(Secondary::feed).thenComparing(Secondary::volts);
        var groups = misfits.stream()
                .collect(Collectors.groupingBy(
                        l -> new Secondary(l.feed(), l.ratedVoltage().si()),
                        () -> new TreeMap<>(order),
                        Collectors.toList()));
        var needs = new ArrayList<TransformerNeed>();
        groups.forEach((secondary, loads) -> needs.add(need(secondary, loads, mains, derivations)));
        return List.copyOf(needs);
    }

    private static TransformerNeed need(
            Secondary secondary, List<SupplyLoad> loads, Mains mains, List<Derivation> derivations) {
        double phases = secondary.feed() == Feed.THREE_PHASE ? Math.sqrt(3) : 1;
        double current = DesignCurrents.sum(loads);
        var power = new ApparentPower(phases * secondary.volts() * current);
        var ids = loads.stream().map(SupplyLoad::id).toList();
        derivations.add(new Derivation(
                "transformer for " + String.join(", ", ids),
                "S",
                secondary.feed() == Feed.THREE_PHASE ? "sqrt(3) U I" : "U I",
                Derivation.inputs("U", new Voltage(secondary.volts()), "I", new Current(current)),
                "derived",
                power));
        return new TransformerNeed(
                secondary.feed(),
                new Voltage(secondary.volts()),
                power,
                new Current(current),
                new Current(power.si() / (phases * mains.voltage().si())),
                ids);
    }
}
