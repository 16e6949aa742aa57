package io.axiswright.engine.supply;

import io.axiswright.engine.design.CodeBasis;
import io.axiswright.engine.design.Mains;
import io.axiswright.engine.design.SystemEarthing;
import io.axiswright.engine.finding.Derivation;
import io.axiswright.engine.finding.Finding;
import io.axiswright.engine.finding.FindingCode;
import io.axiswright.engine.quantity.Current;
import io.axiswright.engine.quantity.Ratio;
import io.axiswright.engine.quantity.Resistance;
import io.axiswright.engine.standard.Limits;
import io.axiswright.engine.standard.ResidualCurrentRatings;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Type and rating of a residual-current device ahead of the machine. */
final class ResidualProtectionSizing {

    private static final String TYPE_CLAUSE = "IEC 60364-5-53 531.3.3, IEC 61800-5-1";

    private final Mains mains;
    private final Rule.Entry share;
    private final Rule.Entry people;
    private final Rule.Entry fire;
    private final Rule.Entry touch;

    ResidualProtectionSizing(CodeBasis basis, Mains mains) {
        this.mains = mains;
        this.share = Rule.RESIDUAL_CURRENT_SHARE.under(basis);
        this.people = Rule.RESIDUAL_CURRENT_RATING.under(basis);
        this.fire = Rule.RESIDUAL_CURRENT_FIRE.under(basis);
        this.touch = Rule.RESIDUAL_TOUCH_VOLTAGE.under(basis);
    }

    /** The device, not smaller than one for the protection of people. */
    ResidualProtection of(List<BranchCircuit> circuits, Feeder feeder) {
        var least = new Current(Math.max(feeder.leakageCurrent().si() / share.value(), people.value()));
        @Nullable
        Current rating =
                ResidualCurrentRatings.nextUp(least).map(r -> r.value()).orElse(null);
        return new ResidualProtection(
                role(),
                feeder.leakageCurrent(),
                circuits.stream()
                        .map(c -> ResidualDeviceType.of(c.use(), c.connection()))
                        .max(Comparator.naturalOrder())
                        .orElse(ResidualDeviceType.A),
                rating,
                highestRating(),
                rating != null && Limits.within(rating.si(), people.value()),
                rating != null && Limits.within(rating.si(), fire.value()));
    }

    private ResidualDeviceRole role() {
        SystemEarthing earthing = mains.earthing();
        return ResidualDeviceRole.in(earthing == null ? SystemEarthing.TN : earthing);
    }

    /** By the loop with both electrodes, which is more than the frames' own resistance: never too high. */
    private @Nullable Current highestRating() {
        Resistance loop = mains.earthFaultLoopImpedance();
        return role() == ResidualDeviceRole.FAULT_PROTECTION && loop != null && loop.si() > 0
                ? new Current(touch.value() / loop.si())
                : null;
    }

    /** In TT the leakage may ask for a device that would leave an earth fault standing. */
    Optional<Finding> ratingFinding(ResidualProtection protection) {
        Current least = protection.rating();
        Current most = protection.highestRating();
        return least == null || most == null || Limits.within(least.si(), most.si())
                ? Optional.empty()
                : Optional.of(FindingCode.SUPPLY_RESIDUAL_RATING_HIGH.at(
                        "the machine", Feeder.POINTER + "/earthFaultLoopImpedance", touch.clause(), least, most));
    }

    /** A device of a lesser type can miss faults, or be blinded by their direct current. */
    Optional<Finding> finding(ResidualProtection protection) {
        return protection.type() == ResidualDeviceType.A
                ? Optional.empty()
                : Optional.of(FindingCode.SUPPLY_RESIDUAL_DEVICE_TYPE.at(
                        "type " + protection.type(), Feeder.POINTER, TYPE_CLAUSE, protection.rating(), null));
    }

    Optional<Derivation> derivation(ResidualProtection protection) {
        return Optional.ofNullable(protection.rating())
                .map(rating -> new Derivation(
                        "residual-current device",
                        "I_dn",
                        "smallest preferred rating >= max(I_leak / k, I_people)",
                        Derivation.inputs(
                                "I_leak", protection.standingLeakage(),
                                "k", new Ratio(share.value()),
                                "I_people", new Current(people.value())),
                        share.clause(),
                        rating));
    }
}
