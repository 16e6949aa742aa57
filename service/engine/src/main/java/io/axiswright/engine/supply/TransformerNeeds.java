package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Feed;
import io.axiswright.engine.design.Transformers;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.quantity.ApparentPower;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Power;
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
import org.jspecify.annotations.Nullable;

/**
 * One transformer for each voltage the mains lack: the smallest standard one that bears its loads and whose highest secondary
 * device carries their design current.
 */
final class TransformerNeeds {

    static final String REGULATION = "IEC 60076-8:1997 clause 7 (from memory), at power factor 1";

    private static final String LOSSES =
            "IEC 60076-1:2011 3.6 (load loss goes with the square of the current; from memory)";

    private static final String FAULT =
            "derived: equivalent voltage source with K_T of IEC 60909-0:2016 (from memory); none in North American practice";

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

    List<Derivation> derivations() {
        return derivations;
    }

    /** The transformer of a secondary, so far without what feeds it and what it feeds. */
    TransformerNeed need(String id, Secondary secondary) {
        var loads = secondary.loads();
        double current = DesignCurrents.sum(loads);
        double heating = currents.heating(loads);
        double phases = phases(secondary);
        var power = new ApparentPower(phases * secondary.voltage().si() * heating);
        var design = new Current(currents.feeder(loads));
        String subject = id;
        derivations.add(new Derivation(
                subject,
                "S",
                secondary.feed() == Feed.THREE_PHASE ? "sqrt(3) U I" : "U I",
                Derivation.inputs("U", secondary.voltage(), "I", new Current(heating)),
                "derived",
                power));
        var rating = rating(secondary, power, design);
        rating.ifPresent(chosen -> derive(subject, chosen));
        var fault = faultCurrent(
                subject,
                secondary,
                rating.map(TransformerRating::secondaryCurrent).orElse(null));
        return new TransformerNeed(
                id,
                secondary.feed(),
                secondary.system(),
                secondary.earthing(request),
                secondary.voltage(),
                power,
                new Current(current),
                new Current(current
                        * secondary.voltage().si()
                        / request.mains().voltage().si()),
                design,
                rating.orElse(null),
                fault,
                rating.map(chosen ->
                                regulation(subject, power.si() / chosen.power().si()))
                        .orElse(null),
                rating.map(chosen -> loss(subject, chosen, DesignCurrents.thermal(loads)))
                        .orElse(null),
                null,
                null,
                loads.stream().map(SupplyLoad::id).toList());
    }

    /**
     * A fault between a line and an earthed star point sees two thirds of what lies ahead of a transformer whose primary is in
     * delta: up to half as much again.
     */
    private Current faultCurrent(String subject, Secondary secondary, @Nullable Current rated) {
        double ratio = request.mains().voltage().si() / secondary.voltage().si();
        double star = secondary.feed() == Feed.THREE_PHASE ? 1.5 : 1;
        double passedOn =
                star * ratio * request.mains().prospectiveFaultCurrent().si();
        Double impedance = request.installation().transformerImpedance();
        if (impedance == null || rated == null) {
            return new Current(passedOn);
        }
        double correction = request.codeBasis() == CodeBasis.NFPA_79 ? 1 : (1 + 0.6 * impedance) / 0.95;
        var fault = new Current(Math.min(passedOn, correction * rated.si() / impedance));
        derivations.add(new Derivation(
                subject,
                "I_k",
                "min(k I_k,mains U_1 / U_2, c I_2 / (K_T u_k))",
                Derivation.inputs(
                        "k", new Ratio(star),
                        "I_k,mains", request.mains().prospectiveFaultCurrent(),
                        "U_1 / U_2", new Ratio(ratio),
                        "I_2", rated,
                        "c / K_T", new Ratio(correction),
                        "u_k", new Ratio(impedance)),
                FAULT,
                fault));
        return fault;
    }

    /** u_R n + (u_X n)² / 2 at power factor 1, n being the share of its rating that is drawn; null where it is not known. */
    private @Nullable Double regulation(String subject, double share) {
        Double impedance = request.installation().transformerImpedance();
        Transformers stated = request.installation().transformers();
        Double resistive = stated == null ? null : stated.resistiveVoltage();
        if (impedance == null || resistive == null) {
            return null;
        }
        double reactive = Math.sqrt(impedance * impedance - resistive * resistive);
        double across = share * reactive;
        double fall = share * resistive + across * across / 2;
        derivations.add(new Derivation(
                subject,
                "u_fall",
                "n u_R + (n u_X)^2 / 2",
                Derivation.inputs("n", new Ratio(share), "u_R", new Ratio(resistive), "u_X", new Ratio(reactive)),
                REGULATION,
                new Ratio(fall)));
        return fall;
    }

    /** P_0 + P_k (I / I_2)², I being what its loads draw over their cycles; null where it is not known. */
    private @Nullable Power loss(String subject, TransformerRating chosen, double thermal) {
        Transformers stated = request.installation().transformers();
        Double atNoLoad = stated == null ? null : stated.noLoadLoss();
        Double resistive = stated == null ? null : stated.resistiveVoltage();
        if (atNoLoad == null || resistive == null) {
            return null;
        }
        double rated = chosen.power().si();
        double share = thermal / chosen.secondaryCurrent().si();
        var loss = new Power(rated * (atNoLoad + resistive * share * share));
        derivations.add(new Derivation(
                subject,
                "P_loss",
                "P_0 + P_k (I_thermal / I_2)^2",
                Derivation.inputs(
                        "P_0", new Power(rated * atNoLoad),
                        "P_k", new Power(rated * resistive),
                        "I_thermal", new Current(thermal),
                        "I_2", chosen.secondaryCurrent()),
                LOSSES,
                loss));
        return loss;
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
