package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import java.util.List;

/** One transformer for each voltage the mains lack. */
final class TransformerNeeds {

    private TransformerNeeds() {}

    static List<TransformerNeed> of(List<SupplyLoad> misfits, Mains mains, List<Derivation> derivations) {
        return Secondary.of(misfits).stream()
                .map(secondary -> need(secondary, mains, derivations))
                .toList();
    }

    private static TransformerNeed need(Secondary secondary, Mains mains, List<Derivation> derivations) {
        double phases = secondary.feed() == Feed.THREE_PHASE ? Math.sqrt(3) : 1;
        double current = DesignCurrents.sum(secondary.loads());
        var power = new ApparentPower(phases * secondary.voltage().si() * current);
        derivations.add(new Derivation(
                "transformer for " + SupplyLoad.named(secondary.loads()),
                "S",
                secondary.feed() == Feed.THREE_PHASE ? "sqrt(3) U I" : "U I",
                Derivation.inputs("U", secondary.voltage(), "I", new Current(current)),
                "derived",
                power));
        return new TransformerNeed(
                secondary.feed(),
                secondary.voltage(),
                power,
                new Current(current),
                new Current(power.si() / (phases * mains.voltage().si())),
                secondary.loads().stream().map(SupplyLoad::id).toList());
    }
}
