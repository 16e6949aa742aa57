package io.axiswright.engine.supply;

import io.axiswright.engine.design.Feed;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Voltage;
import io.axiswright.engine.standard.DeviceRatings;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.Sourced;
import io.axiswright.engine.standard.TransformerProtection;
import io.axiswright.engine.standard.TransformerRatings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One transformer for each voltage the mains lack: the smallest standard one that bears its loads and whose highest secondary
 * device carries their design current.
 */
final class TransformerNeeds {

    private final SupplyRequest request;
    private final DesignCurrents currents;
    private final TransformerProtection protection;
    private final List<Derivation> derivations = new ArrayList<>();

    TransformerNeeds(SupplyRequest request, DesignCurrents currents) {
        this.request = request;
        this.currents = currents;
        this.protection = new TransformerProtection(
                request.codeBasis(), request.installation().device());
    }

    List<TransformerNeed> of(List<SupplyLoad> misfits) {
        double window = Rule.VOLTAGE_WINDOW.under(request.codeBasis()).value();
        return Secondary.of(misfits, window).stream().map(this::need).toList();
    }

    List<Derivation> derivations() {
        return derivations;
    }

    private TransformerNeed need(Secondary secondary) {
        var loads = secondary.loads();
        double current = DesignCurrents.sum(loads);
        double heating = currents.heating(loads);
        double phases = phases(secondary);
        var power = new ApparentPower(phases * secondary.voltage().si() * heating);
        var design = new Current(currents.feeder(loads));
        String subject = "transformer for " + SupplyLoad.named(loads);
        derivations.add(new Derivation(
                subject,
                "S",
                secondary.feed() == Feed.THREE_PHASE ? "sqrt(3) U I" : "U I",
                Derivation.inputs("U", secondary.voltage(), "I", new Current(heating)),
                "derived",
                power));
        var rating = rating(secondary, power, design);
        rating.ifPresent(chosen -> derive(subject, chosen));
        return new TransformerNeed(
                secondary.feed(),
                secondary.voltage(),
                power,
                new Current(current),
                new Current(current
                        * secondary.voltage().si()
                        / request.mains().voltage().si()),
                design,
                rating.orElse(null),
                loads.stream().map(SupplyLoad::id).toList());
    }

    private Optional<TransformerRating> rating(Secondary secondary, ApparentPower power, Current design) {
        return TransformerRatings.of(request.codeBasis(), secondary.feed()).stream()
                .map(Sourced::value)
                .filter(standard -> Limits.within(power.si(), standard.si()))
                .flatMap(standard -> protectedBy(secondary, standard, design).stream())
                .findFirst();
    }

    /** That transformer, if a standard device on its secondary both carries the loads and protects it. */
    private Optional<TransformerRating> protectedBy(Secondary secondary, ApparentPower standard, Current design) {
        var primary = side(secondary, standard, request.mains().voltage());
        var rated = side(secondary, standard, secondary.voltage());
        var limit = protection.secondary(rated);
        return limit.flatMap(most -> DeviceRatings.nextUp(
                                request.codeBasis(), request.installation().device(), design)
                        .map(Sourced::value)
                        .filter(device -> Limits.within(device.si(), most.si())))
                .map(device -> new TransformerRating(
                        standard,
                        primary,
                        rated,
                        protection.primary(primary, rated).orElse(null),
                        device,
                        limit.orElseThrow(),
                        new Current(inrush().value() * primary.si()),
                        tap(Rule.TRANSFORMER_LOWEST_TAP),
                        tap(Rule.TRANSFORMER_HIGHEST_TAP),
                        tap(Rule.TRANSFORMER_TAP_STEP)));
    }

    private static Current side(Secondary secondary, ApparentPower power, Voltage voltage) {
        return new Current(power.si() / (phases(secondary) * voltage.si()));
    }

    private static double phases(Secondary secondary) {
        return secondary.feed() == Feed.THREE_PHASE ? Math.sqrt(3) : 1;
    }

    private Voltage tap(Rule share) {
        return new Voltage(share.under(request.codeBasis()).value()
                * request.mains().voltage().si());
    }

    private Rule.Entry inrush() {
        return Rule.TRANSFORMER_INRUSH.under(request.codeBasis());
    }

    private void derive(String subject, TransformerRating chosen) {
        derivations.add(new Derivation(
                subject,
                "I_n,2,max",
                "highest standard rating for I_2",
                Derivation.inputs("I_2", chosen.secondaryCurrent()),
                protection.clause(chosen.secondaryCurrent()),
                chosen.secondaryDeviceLimit()));
        if (chosen.primaryDeviceLimit() != null) {
            derivations.add(new Derivation(
                    subject,
                    "I_n,1,max",
                    "highest standard rating for I_1",
                    Derivation.inputs("I_1", chosen.primaryCurrent()),
                    protection.clause(chosen.secondaryCurrent()),
                    chosen.primaryDeviceLimit()));
        }
        derivations.add(new Derivation(
                subject,
                "I_inrush",
                "k I_1",
                Derivation.inputs("k", new Ratio(inrush().value()), "I_1", chosen.primaryCurrent()),
                inrush().clause(),
                chosen.inrushCurrent()));
    }
}
